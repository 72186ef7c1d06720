package counterstep.editor.canvas;

import counterstep.model.StepId;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is being dragged, in pixels of the drawing at 100 %. */
sealed interface Drag {
    /** Steps on their way to another place, and the lines that they stand in. */
    record Moving(Set<StepId> steps, double right, double down, List<Line2D> guides)
            implements Drag {}

    /** A link being drawn from a step to the pointer, over another step if there is one. */
    record Linking(StepId from, Point2D start, Point2D to, Optional<StepId> target)
            implements Drag {}

    /** A band around steps to select. */
    record Band(Point2D from, Point2D to) implements Drag {
        Rectangle2D box() {
            Rectangle2D box = new Rectangle2D.Double(from.getX(), from.getY(), 0, 0);
            box.add(to);
            return box;
        }
    }
}
