package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Moves a step one place earlier or later in page order.
 *
 * @param step which
 * @param earlier towards the beginning, else towards the end
 */
public record MoveInPageOrder(StepId step, boolean earlier) implements Edit {
    @Override
    public String name() {
        return earlier ? "Move step earlier" : "Move step later";
    }

    @Override
    public Procedure apply(Procedure before) {
        int from = before.pageNumber(step) - 1;
        int to = earlier ? from - 1 : from + 1;
        if (to < 0 || to >= before.steps().size()) {
            return before;
        }
        List<Step> steps = new ArrayList<>(before.steps());
        Collections.swap(steps, from, to);
        return before.draft().steps(steps).procedure();
    }
}
