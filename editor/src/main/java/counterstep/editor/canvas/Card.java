package counterstep.editor.canvas;

import counterstep.model.StepId;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A step, or a folded phase, in its place.
 *
 * @param step which; of a folded phase the first
 * @param x left edge at 100 %
 * @param y upper edge at 100 %
 * @param face what is read on it
 */
record Card(StepId step, double x, double y, Face face) {
    boolean isFolded() {
        return face instanceof PhaseFace;
    }

    /** The steps behind it, in page order. */
    List<StepId> steps() {
        return face.behind(step);
    }

    /** The last step behind it, in page order. */
    StepId last() {
        return steps().get(steps().size() - 1);
    }

    Rectangle2D box() {
        return new Rectangle2D.Double(x, y, Measures.WIDTH, Measures.HEIGHT);
    }

    double centreX() {
        return x + Measures.WIDTH / 2;
    }

    double centreY() {
        return y + Measures.HEIGHT / 2;
    }
}
