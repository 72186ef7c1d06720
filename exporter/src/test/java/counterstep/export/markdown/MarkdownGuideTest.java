package counterstep.export.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import counterstep.export.Hostile;
import counterstep.export.Prints;
import counterstep.model.Procedure;
import counterstep.store.OutputFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class MarkdownGuideTest {
    @TempDir private Path folder;

    @Test
    void theLampIsWrittenAsInTheGoldenFileAndAgainTheSame() {
        String first = Prints.text(new MarkdownGuide(), Prints.lamp(), folder);
        assertEquals(Prints.golden("lamp.guide.md"), first);
        assertEquals(first, Prints.text(new MarkdownGuide(), Prints.lamp(), folder));
    }

    @Test
    void photosLieBesideItUnderNamesOfOurOwn() {
        List<Path> written = new MarkdownGuide().write(Prints.lamp(), OutputFolder.at(folder));
        assertEquals(folder.resolve("lamp.guide.md"), written.get(0));
        assertTrue(Files.isRegularFile(folder.resolve("lamp.guide.photos/step-2.png")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "[x](javascript:alert(1))",
                "![x](https://example.org/spy.png)",
                "<https://example.org/spy>",
                "# heading",
                "a\n\n# heading\n\n- entry\n\n[ref]: https://example.org",
                "a\n=====",
                "---",
                "```\ncode",
                "`code` **bold** _it_ ~~gone~~ | a | b |",
                "1. one",
                "> quote",
                "&lt;script&gt; &#60;b&#62; \\<i>"
            })
    void hostileWordsNeitherFormatNorLinkNorEmbed(String words) {
        List<Node> nodes = nodes(Hostile.saying(words));
        List<Node> plain = nodes(Hostile.saying("words"));
        assertEquals(count(plain, Heading.class), count(nodes, Heading.class), "headings");
        assertEquals(0, count(nodes, HtmlBlockBase.class) + count(nodes, HtmlInlineBase.class));
        assertEquals(0, count(nodes, Image.class));
        List<String> links =
                nodes.stream()
                        .filter(LinkNodeBase.class::isInstance)
                        .map(link -> ((LinkNodeBase) link).getUrl().toString())
                        .filter(url -> !url.startsWith("https://"))
                        .toList();
        assertEquals(List.of(), links);
    }

    private List<Node> nodes(Procedure procedure) {
        String text = Prints.text(new MarkdownGuide(), Prints.of(procedure), folder);
        List<Node> nodes = new ArrayList<>();
        Parser.builder().build().parse(text).getDescendants().forEach(nodes::add);
        return nodes;
    }

    private static long count(List<Node> nodes, Class<?> kind) {
        return nodes.stream().filter(kind::isInstance).count();
    }
}
