package counterstep.export.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.export.Exporter;
import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.export.report.ReviewReport;
import counterstep.export.spoken.NarrationScript;
import counterstep.store.OutputFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever we write as Markdown means the same to two parsers of different makers. */
final class SecondParserTest {
    private static final List<Exporter> EXPORTERS =
            List.of(new MarkdownGuide(), new NarrationScript(), new ReviewReport());

    @TempDir private Path folder;

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void samplesMeanTheSameToBoth(String name) throws Exception {
        assertTheSameToBoth(Prints.sample(name));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<b>*a* & [x](y) `z` ![p](q)",
                "> quote\n>\n> 1. one\n> 2. two\n\n    code <b>\n\n***\n\n# heading",
                "a__b__c *d*e **f** _g_ \\* `` ` `` <https://example.org/a_b>",
                "- one\n- two\n\n  three\n\n~~~\ncode\n~~~\n",
                "1) one\n2) two\n+ three\n= four",
                "[ref]: https://example.org\n\n[ref] &copy; &#42; &amp;"
            })
    void hostileWordsMeanTheSameToBoth(String words) throws Exception {
        assertTheSameToBoth(Prints.of(Hostile.saying(words)));
    }

    private void assertTheSameToBoth(Print print) throws IOException {
        for (Exporter exporter : EXPORTERS) {
            for (Path file : exporter.write(print, OutputFolder.at(folder))) {
                if (file.toString().endsWith(".md")) {
                    String page = Files.readString(file);
                    assertEquals(plain(flexmark(page)), plain(commonmark(page)));
                }
            }
        }
    }

    private static String flexmark(String page) {
        return com.vladsch.flexmark.html.HtmlRenderer.builder()
                .build()
                .render(com.vladsch.flexmark.parser.Parser.builder().build().parse(page));
    }

    private static String commonmark(String page) {
        return HtmlRenderer.builder().build().render(Parser.builder().build().parse(page));
    }

    /** The elements and their words, however they are written down. */
    private static String plain(String html) {
        return Jsoup.parseBodyFragment(html).body().html();
    }
}
