package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class StepThatIsNotThereTest {
    private static Sketch saying(String text) {
        return Sketch.of().step("check").text(text).step("check").text("Look at it.");
    }

    @Test
    void aNumberAboveTheLastStepIsTold() {
        assertEquals(
                List.of(
                        "step-that-is-not-there [s1] [] Step 1 names 'step 3'; there are steps 1"
                                + " to 2."),
                Found.in(saying("Wait until step 3 is done.")));
        assertEquals(List.of(), Found.in(saying("Wait until step 2 is done.")));
    }

    @Test
    void aStepThatIsGoneIsTold() {
        assertEquals(
                List.of(
                        "step-that-is-not-there [s1] [] Step 1 names 'step ?' and 'step 4'; there"
                                + " are steps 1 to 2."),
                Found.in(saying("See steps 1, ? and 4.")));
    }

    @Test
    void aStepThatIsNoStepOfTheProcedureIsNot() {
        assertEquals(List.of(), Found.in(saying("Mind the step 30 mm high.")));
    }

    @Test
    void aLanguageWithoutWordsIsNotRead() {
        var english = saying("Wait until step 3 is done.").procedure();
        assertEquals(List.of(), Found.in(Languages.of(english, "sl")));
    }
}
