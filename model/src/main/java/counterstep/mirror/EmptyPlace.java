package counterstep.mirror;

import counterstep.model.StepId;
import java.util.List;

/**
 * The place on the right of a putting back that is not there.
 *
 * @param left the step that takes off
 * @param row of the place: that of the step, or one below where a step stands there already
 * @param items what nothing puts back, not even in part
 */
public record EmptyPlace(StepId left, int row, List<RungItem> items) {
    /** Copies the list. */
    public EmptyPlace {
        items = List.copyOf(items);
    }
}
