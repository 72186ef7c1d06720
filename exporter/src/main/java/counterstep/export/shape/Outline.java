package counterstep.export.shape;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** The plain figures that marks are made of; all in pixels at 100 %, y down. */
final class Outline {
    private Outline() {}

    static Shape circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    static Shape box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, height);
    }

    static Shape roundBox(double x, double y, double width, double height, double corner) {
        return new RoundRectangle2D.Double(x, y, width, height, 2 * corner, 2 * corner);
    }

    static Shape segment(double x1, double y1, double x2, double y2) {
        return new Line2D.Double(x1, y1, x2, y2);
    }

    /** Straight lines through points given as x, y, x, y ...; open. */
    static Path2D open(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int next = 2; next < points.length; next += 2) {
            path.lineTo(points[next], points[next + 1]);
        }
        return path;
    }

    /** The same, closed. */
    static Path2D closed(double... points) {
        Path2D path = open(points);
        path.closePath();
        return path;
    }

    /**
     * A star of so many points, the first to the right; with both radii alike a regular polygon of
     * twice as many corners.
     */
    static Path2D star(int points, double outer, double inner) {
        double[] corners = new double[points * 4];
        for (int corner = 0; corner < points * 2; corner++) {
            double angle = Math.PI * corner / points;
            double radius = corner % 2 == 0 ? outer : inner;
            corners[corner * 2] = radius * Math.cos(angle);
            corners[corner * 2 + 1] = radius * Math.sin(angle);
        }
        return closed(corners);
    }

    /** A hexagon with a corner to the right. */
    static Path2D hexagon(double radius) {
        double half = radius / 2;
        double high = radius * Math.sqrt(3) / 2;
        return closed(radius, 0, half, high, -half, high, -radius, 0, -half, -high, half, -high);
    }

    /** The same shape so many times around the origin, joined. */
    static Area around(Shape one, int times) {
        Area all = new Area();
        for (int turn = 0; turn < times; turn++) {
            AffineTransform rotation =
                    AffineTransform.getRotateInstance(2 * Math.PI * turn / times);
            all.add(new Area(rotation.createTransformedShape(one)));
        }
        return all;
    }
}
