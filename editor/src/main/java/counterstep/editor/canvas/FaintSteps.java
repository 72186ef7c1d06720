package counterstep.editor.canvas;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.Set;

/** Draws faint what is not among the steps in question, and the links that lead there. */
final class FaintSteps {
    private static final float FAINT = 0.22f;

    private Optional<Set<StepId>> shown = Optional.empty();

    /** From now on these alone are drawn in full; all where none are named. */
    void showOnly(Optional<Set<StepId>> steps) {
        shown = steps.map(Set::copyOf);
    }

    /** A copy of the graphics to draw a step or a link with. */
    Graphics2D ground(Graphics2D graphics, Object id) {
        Graphics2D ground = (Graphics2D) graphics.create();
        if (shown.isPresent() && !isShown(id, shown.get())) {
            ground.setComposite(AlphaComposite.SrcOver.derive(FAINT));
        }
        return ground;
    }

    /** The painter with what is drawn faint put over it. */
    StepCells.CellPainter over(StepCells.CellPainter painter) {
        return (graphics, id, zoom) -> {
            Graphics2D ground = ground(graphics, id);
            painter.paint(ground, id, zoom);
            ground.dispose();
        };
    }

    private static boolean isShown(Object id, Set<StepId> steps) {
        if (id instanceof LinkEnds link) {
            return steps.contains(link.before()) && steps.contains(link.after());
        }
        return !(id instanceof StepId step) || steps.contains(step);
    }
}
