package counterstep.model;

import java.util.List;

/**
 * Steps that must stay in company.
 *
 * @param rule kept together in any order, or each right after the one before it
 * @param steps two or more
 * @param extras unknown fields
 */
public record StepGroup(GroupRule rule, List<StepId> steps, Extras extras) {
    /** Refuses a group of fewer than two; copies the list. */
    public StepGroup {
        steps = List.copyOf(steps);
        Require.atLeast(2, steps.size(), "a group");
    }
}
