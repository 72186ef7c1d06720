package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class StepWithoutActionOrTextTest {
    @Test
    void aTitleAloneIsNotEnough() {
        assertEquals(
                List.of(
                        "step-without-action-or-text [s1] [] Step 1 has neither an action nor a"
                                + " text."),
                Found.in(Sketch.of().step("").text(" \n")));
    }

    @Test
    void eitherIsEnough() {
        assertEquals(List.of(), Found.in(Sketch.of().step("check").step("").text("Rest.")));
    }
}
