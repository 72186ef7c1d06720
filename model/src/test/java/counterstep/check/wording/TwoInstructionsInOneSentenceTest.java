package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Facts;
import counterstep.check.Fix;
import counterstep.model.Procedure;
import counterstep.review.Fixes;
import counterstep.review.Review;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class TwoInstructionsInOneSentenceTest {
    private static Procedure of(String text) {
        return Sketch.of().step("check").text(text).procedure();
    }

    private static Optional<String> mended(String text) {
        Procedure before = of(text);
        Facts facts = Facts.of(before);
        Review review = Review.of(facts);
        Optional<Fix> fix = Fixes.of(facts, review).of(review.findings().get(0));
        return fix.map(one -> one.edit().apply(before).steps().get(0).text());
    }

    @Test
    void theSecondOneIsNamed() {
        assertEquals(
                List.of(
                        "two-instructions-in-one-sentence [s1] [] In step 1, 'Warm the edge, then"
                                + " wait ...' gives a second instruction: 'wait'."),
                Found.in(of("Warm the edge, then wait for a minute.")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Clean the table and count the trays.",
                "Warm the edge, clean the slot.",
                "If the tray is full, empty it and write the number down.",
                "Gently fold the cloth, and then lay it aside.",
                "Press the button until the light comes on, then release the button."
            })
    void andThenAndCommaJoinTwo(String text) {
        assertEquals(1, Found.in(of(text)).size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Press and hold the button.",
                "Hold the tray with one hand and turn the table.",
                "Turn the table while you hold the tray and look at the line.",
                "Do not bend the card and twist it.",
                "Clean the slot, the edge and the screen.",
                "Press one end, then the other, until it clicks.",
                "Wait until the light and the lamp are off.",
                "Count the trays. Write the number down.",
                "Check that the light is on and stays on.",
                "Push the card in to seat it and hold it."
            })
    void oneInstructionOrSeveralAtOnceAreFine(String text) {
        assertEquals(List.of(), Found.in(of(text)));
    }

    @Test
    void theFixSplitsTheSentence() {
        assertEquals(
                Optional.of("Clean the table. Count the trays. Write the number down."),
                mended("Clean the table, count the trays and write the number down."));
    }

    @Test
    void marksInTheWayLeaveItToTheWriter() {
        assertEquals(Optional.empty(), mended("Clean the table *and then* count the trays."));
    }
}
