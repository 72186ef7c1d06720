package counterstep.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import counterstep.export.Prints;
import counterstep.review.AllChecks;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ReportTextTest {
    private static String plain(String markdown) {
        return new TextCollectingVisitor()
                .collectAndGetText(Parser.builder().build().parse(markdown));
    }

    @Test
    void theLampIsSetAsInTheGoldenFile() {
        assertEquals(Prints.golden("lamp.review.md"), ReportText.of(Reports.lamp()));
    }

    @Test
    void itLiesBesideThePage(@TempDir Path folder) throws Exception {
        List<Path> written =
                new ReviewReport()
                        .write(Prints.sample(Samples.STICK_UNIT), OutputFolder.at(folder));
        assertEquals(
                List.of(
                        folder.resolve("orrin-c4-stick-unit.review.html"),
                        folder.resolve("orrin-c4-stick-unit.review.md")),
                written);
        assertTrue(Files.readString(written.get(1)).startsWith("# Orrin C4"));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void everyFindingAndEveryCheckIsTold(String name) {
        Report report = Report.of(Prints.sample(name));
        String text = plain(ReportText.of(report));
        for (Entry entry : report.open()) {
            assertTrue(text.contains(entry.message()), entry.message());
            assertTrue(text.contains(entry.fix()), entry.fix());
            entry.order().forEach(line -> assertTrue(text.contains(line), line));
        }
        AllChecks.list().forEach(check -> assertTrue(text.contains(check.about().name()), text));
        assertTrue(text.contains(report.imprint().fingerprint()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "[x](javascript:alert(1))",
                "![x](https://example.org/spy.png)",
                "a\n\n# heading\n\n- entry\n\n[ref]: https://example.org",
                "a\n=====",
                "---",
                "*bold* `code`",
                "> quote"
            })
    void hostileWordsNeitherFormatNorLink(String words) {
        List<Node> plain = nodes("words");
        List<Node> nodes = nodes(words);
        assertEquals(kinds(plain, Heading.class), kinds(nodes, Heading.class));
        assertEquals(0, kinds(nodes, HtmlBlockBase.class) + kinds(nodes, HtmlInlineBase.class));
        assertEquals(0, kinds(nodes, LinkNodeBase.class));
    }

    private static List<Node> nodes(String words) {
        List<Node> nodes = new ArrayList<>();
        Report report = Report.of(Prints.of(Reports.reviewed(words)));
        Parser.builder().build().parse(ReportText.of(report)).getDescendants().forEach(nodes::add);
        return nodes;
    }

    private static long kinds(List<Node> nodes, Class<?> kind) {
        return nodes.stream().filter(kind::isInstance).count();
    }
}
