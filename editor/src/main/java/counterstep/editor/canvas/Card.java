package counterstep.editor.canvas;

import counterstep.model.StepId;
import java.awt.geom.Rectangle2D;

/**
 * A step in its place.
 *
 * @param step which
 * @param x left edge at 100 %
 * @param y upper edge at 100 %
 * @param face what is read on it
 */
record Card(StepId step, double x, double y, StepFace face) {
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
