package counterstep.editor.canvas;

import counterstep.model.LinkEnds;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The way of a link across the drawing.
 *
 * @param link which
 * @param points corners from the earlier step to the later one, two or more, at right angles
 * @param critical whether it lies on the critical path
 */
record Route(LinkEnds link, List<Point2D> points, boolean critical) {
    /** Copies the list. */
    Route {
        points = List.copyOf(points);
    }

    Rectangle2D bounds() {
        Rectangle2D bounds =
                new Rectangle2D.Double(points.get(0).getX(), points.get(0).getY(), 0, 0);
        points.forEach(bounds::add);
        return bounds;
    }
}
