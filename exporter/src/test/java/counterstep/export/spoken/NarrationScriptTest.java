package counterstep.export.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.export.SpeechRate;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.ProcedureDraft;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.testing.Samples;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class NarrationScriptTest {
    @TempDir private Path folder;

    private String written(Print print) {
        return Prints.text(new NarrationScript(), print, folder);
    }

    private static Procedure of(Step step) {
        return new ProcedureDraft("short", TitleBlock.titled("Short"))
                .steps(List.of(step))
                .procedure();
    }

    private static Step step(String text, String spoken) {
        return Step.titled(new StepId("s1"), Phase.TEARDOWN, "Lid off")
                .draft()
                .text(text)
                .spoken(spoken)
                .step();
    }

    private static String said(Step step) {
        Spoken spoken = Narration.of(Prints.of(of(step))).step(1);
        return String.join(" ", spoken.passages().get(0).sentences());
    }

    @Test
    void theLampIsWrittenAsInTheGoldenFileAndAgainTheSame() {
        String first = written(Prints.lamp());
        assertEquals(Prints.golden("lamp.narration.md"), first);
        assertEquals(first, written(Prints.lamp()));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void everyStepIsSaidOnceWhereTheOneBeforeItEnds(String name) {
        Print print = Prints.sample(name);
        Narration narration = Narration.of(print);
        assertEquals(print.procedure().steps().size() + 1, narration.parts().size());
        int words = 0;
        for (Spoken part : narration.parts()) {
            assertEquals(words, part.from());
            assertTrue(part.words() > 0, part.title());
            words += part.words();
        }
        assertEquals(words, narration.words());
        long headings =
                written(print).lines().filter(line -> line.matches("### \\d+\\. .+")).count();
        assertEquals(print.procedure().steps().size(), headings);
    }

    @Test
    void theWritersSpokenWordsGoBeforeTheTextAndTheTitleIsSaidWhereNothingElseIs() {
        assertEquals("Off it goes.", said(step("Take the lid off.", "Off it goes.")));
        assertEquals("Take the lid off.", said(step("Take the *lid* off.", " ")));
        assertEquals("Lid off.", said(step("", "")));
    }

    @Test
    void listsAndLinksAreSaidWithoutTheirMarks() {
        assertEquals(
                "Take two. one. two. See the plan.",
                said(
                        step(
                                "Take two.\n\n1. one.\n2. two.\n\nSee [the plan](https://example.org).",
                                "")));
    }

    @Test
    void theLengthFollowsTheRateAndASayingLongerThanTheStepIsTold() {
        Step step = step("again ".repeat(30), "").draft().seconds(OptionalInt.of(10)).step();
        Print print = Prints.of(of(step));
        assertTrue(
                written(print)
                        .contains(
                                "30 words in 0:12, from its text; the step takes 0:10, less than is said"));
        String fast = written(print.at(new SpeechRate(300)));
        assertTrue(fast.contains("30 words in 0:06, from its text; the step takes 0:10*"));
        assertTrue(fast.contains("at 300 words per minute"));
        assertTrue(fast.contains("Brysbaert 2019"));
    }

    @Test
    void anIncompleteProcedureSaysThatNobodyMayWorkByIt() {
        assertTrue(written(Prints.sample(Samples.HURRIED)).contains("Do not work by this print"));
        assertFalse(written(Prints.sample(Samples.STICK_UNIT)).contains("Do not work"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "[x](javascript:alert(1))",
                "a\n\n# heading\n\n- entry\n\n[ref]: https://example.org",
                "---",
                "a\n=====",
                "> quote"
            })
    void hostileWordsNeitherFormatNorLink(String words) {
        List<Node> nodes = nodes(Hostile.saying(words));
        List<Node> plain = nodes(Hostile.saying("words"));
        assertEquals(count(plain, Heading.class), count(nodes, Heading.class), "headings");
        assertEquals(0, count(nodes, HtmlBlockBase.class) + count(nodes, HtmlInlineBase.class));
        assertEquals(0, count(nodes, LinkNodeBase.class));
    }

    private List<Node> nodes(Procedure procedure) {
        List<Node> nodes = new ArrayList<>();
        Parser.builder()
                .build()
                .parse(written(Prints.of(procedure)))
                .getDescendants()
                .forEach(nodes::add);
        return nodes;
    }

    private static long count(List<Node> nodes, Class<?> kind) {
        return nodes.stream().filter(kind::isInstance).count();
    }
}
