package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Finding;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.review.Review;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class StepWithoutTimeTest {
    private static List<String> found(OptionalInt seconds) {
        Step step =
                Step.titled(new StepId("s1"), Phase.PREPARE, "Read this")
                        .draft()
                        .seconds(seconds)
                        .step();
        return Review.of(Procedure.titled("pump", "Pump").draft().steps(List.of(step)).procedure())
                .findings()
                .stream()
                .map(Finding::check)
                .toList();
    }

    @Test
    void noTimeIsAHint() {
        assertEquals(List.of("step-without-time"), found(OptionalInt.empty()));
    }

    @Test
    void zeroIsATime() {
        assertEquals(List.of(), found(OptionalInt.of(0)));
    }
}
