package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.StepId;
import java.util.List;

/**
 * One action as the replay meets it.
 *
 * @param step the step it stands in
 * @param action its place in the step, from 0
 * @param what the action
 * @param before state of its item before it; {@link NoState} where it names none
 * @param after state of its item after it
 * @param failures the conditions that do not hold when it starts
 */
public record Happening(
        StepId step,
        int action,
        Action what,
        ItemState before,
        ItemState after,
        List<Failure> failures) {
    /** Copies the list. */
    public Happening {
        failures = List.copyOf(failures);
    }
}
