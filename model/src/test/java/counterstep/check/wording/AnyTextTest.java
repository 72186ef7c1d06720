package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.model.Procedure;
import counterstep.testing.Sketch;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands in a text, the checks of words answer, and soon. */
final class AnyTextTest {
    private static final List<String> BITS =
            List.of(
                    "Remove ",
                    "the ",
                    "six ",
                    "screws",
                    " and ",
                    "then ",
                    ", ",
                    ". ",
                    "(",
                    ")",
                    "[",
                    "](",
                    "![",
                    "`",
                    "``",
                    "*",
                    "**",
                    "_",
                    "\\",
                    "&amp;",
                    "&",
                    "<",
                    ">",
                    "<a:b>",
                    "\n",
                    "\r\n",
                    "\n\n",
                    "- ",
                    "1. ",
                    "# ",
                    "```",
                    "~~~",
                    "    ",
                    "===",
                    "---",
                    "\t",
                    "5",
                    "4.5",
                    "’",
                    "of ",
                    "hold ",
                    "\u0000",
                    "\uD83D",
                    "\uD83D\uDD29",
                    "e\u0301",
                    "螺丝",
                    "\u2028",
                    "\u00A0",
                    "İ");

    static LongStream seeds() {
        return LongStream.range(0, 2000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyTextIsAnswered(long seed) {
        Random random = new Random(seed);
        answer(any(random), any(random));
    }

    private static String any(Random random) {
        StringBuilder text = new StringBuilder();
        for (int count = random.nextInt(60); count > 0; count--) {
            boolean known = random.nextInt(4) > 0;
            text.append(
                    known
                            ? BITS.get(random.nextInt(BITS.size()))
                            : String.valueOf((char) random.nextInt(Character.MAX_VALUE + 1)));
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[",
                "](",
                "(",
                "`",
                "<",
                "*",
                "_",
                "&",
                "> ",
                "#",
                "-",
                "- ",
                "\n",
                "``` ",
                "and ",
                "of ",
                "the ",
                "six ",
                "Lift the ",
                "Lift the six ",
                "back ",
                ", ",
                "\\",
                "![",
                "<a:",
                "` `` ",
                "((",
                "a-",
                "x",
                "six of the ",
                "until ",
                "[a]: b\n",
                "six lid screws ",
                "hold it and press it and ",
                "4 rim clips, "
            })
    void aLongTextOfTheSameIsAnsweredSoon(String bit) {
        String text = "Remove " + bit.repeat(60_000 / bit.length());
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> answer(text, text));
    }

    private static void answer(String title, String text) {
        Procedure plain =
                Sketch.of()
                        .screws("lid", 6)
                        .clips("rim", 2)
                        .step("loosen lid; unclip rim")
                        .procedure();
        var step = plain.steps().get(0).draft().title(title).text(text).step();
        Facts facts = Facts.of(plain.withStep(step));
        for (Check check : WordingChecks.all()) {
            for (Finding finding : check.examine(facts).toList()) {
                check.fixes(facts, finding).forEach(fix -> changes(facts.procedure(), fix));
            }
        }
    }

    private static void changes(Procedure before, Fix fix) {
        assertNotEquals(before, fix.edit().apply(before), fix.name());
    }
}
