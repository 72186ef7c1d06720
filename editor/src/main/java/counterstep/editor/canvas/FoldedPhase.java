package counterstep.editor.canvas;

import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.List;

/**
 * A phase that is drawn as one card.
 *
 * @param steps the steps in it, in page order, at least one
 * @param place upper left corner of the card at 100 %
 */
record FoldedPhase(List<Step> steps, Point2D place) {
    /** Copies the list. */
    FoldedPhase {
        steps = List.copyOf(steps);
    }

    /** The step by whose id the card goes. */
    StepId head() {
        return steps.get(0).id();
    }
}
