package counterstep.study;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.List;

/**
 * A judgement by hand: a step that changes no counted state comes before another, or after it.
 *
 * @param before comes first
 * @param after comes later
 * @param reason why, in the words of a technician
 */
record Asked(StepId before, StepId after, String reason) {
    static Asked of(String before, String after, String reason) {
        return new Asked(new StepId(before), new StepId(after), reason);
    }

    /** Whether one of the steps is gone, or some order has them the wrong way. */
    boolean broken(Procedure procedure, List<List<StepId>> orders) {
        List<StepId> there = procedure.steps().stream().map(Step::id).toList();
        return !there.contains(before)
                || !there.contains(after)
                || orders.stream().anyMatch(order -> order.indexOf(before) > order.indexOf(after));
    }
}
