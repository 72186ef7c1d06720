package counterstep.mirror;

import counterstep.model.StepId;
import java.util.List;

/**
 * What joins a step on the left and one on the right that undoes some of it.
 *
 * @param left takes off
 * @param right puts back
 * @param items what, each once, at least one
 */
public record Rung(StepId left, StepId right, List<RungItem> items) {
    /** Copies the list. */
    public Rung {
        items = List.copyOf(items);
    }
}
