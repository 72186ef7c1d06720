package counterstep.export.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.Hostile;
import counterstep.export.NuValidator;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.testing.Samples;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class HtmlGuideTest {
    private static final Pattern PICTURE_DATA = Pattern.compile("(?<=;base64,)[A-Za-z0-9+/=]+");
    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    @TempDir private Path folder;

    static Stream<String> samples() {
        return Samples.names().stream();
    }

    @Test
    void theLampIsPrintedAsInTheGoldenFileAndAgainTheSame() {
        String first = page(Prints.lamp());
        assertEquals(Prints.golden("lamp.guide.body.html"), body(first));
        assertEquals(first, page(Prints.lamp()));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aValidatorFindsNothingWrongWithTheGuideOfASample(String name) throws Exception {
        assertEquals("", NuValidator.complaints(page(Prints.sample(name))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "</style><script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "' onmouseover='alert(1)",
                "--><svg onload=alert(1)>",
                "\"; } body { background: url(https://example.org/x) } \\",
                "]]>\u0000\u0007\uFFFF\u202Egnp.exe",
                "[x](javascript:alert(1)) <javascript:alert(1)> ![y](https://example.org/z.png)"
            })
    void hostileWordsStayWords(String words) throws Exception {
        String page = page(Prints.of(Hostile.saying(words)));
        assertEquals("", NuValidator.complaints(page));
        List<String> tags = TAG.matcher(page).results().map(found -> found.group()).toList();
        List<String> plain =
                TAG.matcher(page(Prints.of(Hostile.saying("words"))))
                        .results()
                        .map(found -> found.group())
                        .toList();
        assertEquals(names(plain), names(tags), "the words have changed the markup");
        assertFalse(page.contains("href=\"javascript"));
        assertFalse(page.contains("src=\"http"));
    }

    @Test
    void onlyLinksToTheWebAndToMailAreLinks() {
        String page = page(Prints.lamp());
        assertTrue(page.contains("<a href=\"https://example.org/plan\""));
        assertTrue(page.contains("not this (javascript:alert)"));
    }

    @Test
    void onlyTheScriptOfTheTicksAndItsOwnSheetMayBeUsed() throws Exception {
        String page = page(Prints.sample(Samples.STICK_UNIT));
        List<String> scripts =
                Pattern.compile("(?s)<script>(.*?)</script>")
                        .matcher(page)
                        .results()
                        .map(found -> found.group(1))
                        .toList();
        assertEquals(1, scripts.size());
        assertFalse(page.contains(" style=\""));
        assertTrue(page.contains("default-src &#39;none&#39;; img-src data:; font-src data:;"));
        byte[] digest =
                MessageDigest.getInstance("SHA-256")
                        .digest(scripts.get(0).getBytes(StandardCharsets.UTF_8));
        String hash = Base64.getEncoder().encodeToString(digest);
        assertTrue(page.contains("; script-src &#39;sha256-" + hash + "&#39;"));
    }

    @Test
    void theContentsLeadToEachPhaseAndEachStep() {
        String page = page(Prints.sample(Samples.SUPPLY_FAN));
        List<String> aims =
                Pattern.compile("<a href=\"#([^\"]+)\"")
                        .matcher(page)
                        .results()
                        .map(found -> found.group(1))
                        .toList();
        int steps = Prints.sample(Samples.SUPPLY_FAN).procedure().steps().size();
        assertTrue(aims.contains("phase-1") && aims.contains("step-" + steps));
        assertEquals(List.of(), aims.stream().filter(aim -> !once(page, aim)).toList());
    }

    private static boolean once(String page, String anchor) {
        String id = " id=\"" + anchor + "\"";
        return page.contains(id) && page.indexOf(id) == page.lastIndexOf(id);
    }

    @Test
    void anUnfinishedProcedureSaysSoAtTheTop() {
        Print hurried = Prints.sample(Samples.HURRIED);
        String line = "Not complete: " + hurried.errors() + " errors found.";
        assertTrue(hurried.errors() > 1);
        assertTrue(page(hurried).contains(line));
        assertFalse(page(Prints.sample(Samples.STICK_UNIT)).contains("Not complete"));
    }

    @Test
    void noticesStandBeforeTheTitleAndTheMostSevereFirst() {
        String body = body(page(Prints.lamp()));
        assertTrue(body.indexOf("WARNING") < body.indexOf("The shade scratches"));
        assertTrue(body.indexOf("The plate is painted") < body.indexOf("<h3>Foot plate off"));
    }

    private String page(Print print) {
        return Prints.text(new HtmlGuide(), print, folder);
    }

    private static String body(String page) {
        String body = page.substring(page.indexOf("<body"));
        return PICTURE_DATA.matcher(body).replaceAll("...");
    }

    /** Names of the elements in order, with the anchors left out that a text may hold. */
    private static List<String> names(List<String> tags) {
        return tags.stream()
                .map(tag -> tag.split("[ >]", 2)[0])
                .filter(name -> !name.matches("</?(p|em)"))
                .toList();
    }
}
