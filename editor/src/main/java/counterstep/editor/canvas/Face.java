package counterstep.editor.canvas;

import counterstep.model.Phase;
import counterstep.model.StepId;
import java.util.List;

/** What is read on a card. */
sealed interface Face permits StepFace, PhaseFace {
    /** Tells the left edge. */
    Phase phase();

    /** What it says to somebody who cannot see it. */
    String said();

    /**
     * The steps that stand behind a card, in page order.
     *
     * @param step the step by whose id the card goes
     */
    List<StepId> behind(StepId step);
}
