package counterstep.estimate;

import counterstep.edit.Edit;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeSource;
import java.util.Map;
import java.util.OptionalInt;

/**
 * States estimates as the hands times of steps, marked as estimated.
 *
 * @param seconds by step
 */
public record UseEstimates(Map<StepId, Integer> seconds) implements Edit {
    /** Copies the map. */
    public UseEstimates {
        seconds = Map.copyOf(seconds);
    }

    @Override
    public String name() {
        return seconds.size() == 1 ? "Use the estimate" : "Use the estimates";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft().steps(before.steps().stream().map(this::of).toList()).procedure();
    }

    /** A step with its estimate stated, if it has one here. */
    public Step of(Step step) {
        Integer estimate = seconds.get(step.id());
        return estimate == null
                ? step
                : step.draft()
                        .seconds(OptionalInt.of(estimate))
                        .timeSource(TimeSource.ESTIMATED)
                        .step();
    }
}
