package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class StepWithoutTimeTest {
    private static Procedure of(OptionalInt seconds) {
        Procedure procedure = Sketch.of().step("check").procedure();
        Step step = procedure.steps().get(0);
        return procedure.withStep(step.draft().seconds(seconds).step());
    }

    @Test
    void aStepThatStatesNoneCountsNothingInThePlan() {
        assertEquals(
                List.of("step-without-time [s1] [] Step 1 states no time; the plan counts it 0."),
                Found.in(of(OptionalInt.empty())));
    }

    @Test
    void zeroIsATime() {
        assertEquals(List.of(), Found.in(of(OptionalInt.of(0))));
    }
}
