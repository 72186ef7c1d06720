import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Plain shapes. */
final class Plan {
    private Plan() {}

    static Shape box(double x, double y, double width, double depth) {
        return new Rectangle2D.Double(x, y, width, depth);
    }

    static Shape rounded(double x, double y, double width, double depth, double radius) {
        return new RoundRectangle2D.Double(x, y, width, depth, 2 * radius, 2 * radius);
    }

    static Shape disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    static Shape segment(double x, double y, double toX, double toY) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y);
        path.lineTo(toX, toY);
        return path;
    }
}
