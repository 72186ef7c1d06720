package counterstep.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.NuValidator;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ReviewReportTest {
    @TempDir private Path folder;

    private String page(Print print) {
        return Prints.text(new ReviewReport(), print, folder);
    }

    private static String body(String page) {
        return page.substring(page.indexOf("<body>"));
    }

    @Test
    void theLampIsSetAsInTheGoldenFile() throws Exception {
        String page = ReportPage.of(Reports.lamp());
        assertEquals(Prints.golden("lamp.review.body.html"), body(page));
        assertEquals("", NuValidator.complaints(page));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void aValidatorFindsNothingWrongWithTheReportOfASample(String name) throws Exception {
        Print print = Prints.sample(name);
        String page = page(print);
        assertEquals("", NuValidator.complaints(page));
        assertEquals(page, page(Prints.of(Samples.file(name))));
        assertTrue(page.contains(print.fingerprint()));
    }

    @Test
    void theFileIsNamedAfterTheProcedure() {
        assertEquals(
                folder.resolve("orrin-c4-stick-unit.review.html"),
                new ReviewReport()
                        .write(Prints.sample(Samples.STICK_UNIT), OutputFolder.at(folder))
                        .get(0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "</style><script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "\"; } body { background: url(https://example.org/x) } \\",
                "]]>\u0000\u0007\uFFFF\u202Egnp.exe"
            })
    void hostileWordsStayWords(String words) throws Exception {
        String page = page(Prints.of(Reports.reviewed(words)));
        assertEquals("", NuValidator.complaints(page));
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("<img"));
        String sheet = page.substring(page.indexOf("<style>"), page.indexOf("</style>"));
        assertFalse(sheet.contains("example.org"));
        assertEquals(tags(page(Prints.of(Reports.reviewed("words")))), tags(page));
    }

    private static List<String> tags(String page) {
        return Pattern.compile("<[a-z0-9/!]+")
                .matcher(page)
                .results()
                .map(found -> found.group())
                .toList();
    }
}
