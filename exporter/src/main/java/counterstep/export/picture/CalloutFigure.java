package counterstep.export.picture;

import counterstep.model.Callout;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The outlines of a callout on a photo: a disc that carries the number and, for a box or an arrow,
 * what leads from it. One colour, with a light rim so that it shows on any ground.
 *
 * @param disc where the number stands
 * @param leader the frame of a box, the line and head of an arrow; empty for a point
 * @param radius of the disc, in the unit of the photo's width
 */
public record CalloutFigure(Ellipse2D disc, Area leader, double radius) {
    /** The disc's radius as a part of the photo's width. */
    private static final double PART = 0.042;

    /** The figure of a callout on a photo of that size. */
    public static CalloutFigure of(Callout callout, double width, double height) {
        double radius = PART * width;
        double x = inside(callout.x() * width, radius, width);
        double y = inside(callout.y() * height, radius, height);
        double toX = callout.toX() * width;
        double toY = callout.toY() * height;
        Area leader =
                switch (callout.shape()) {
                    case POINT -> new Area();
                    case BOX -> frame(callout.x() * width, callout.y() * height, toX, toY, radius);
                    case ARROW -> arrow(x, y, toX, toY, radius);
                };
        Ellipse2D disc = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        return new CalloutFigure(disc, leader, radius);
    }

    /** The rim around a shape, so wide that it shows on dark ground. */
    public static Shape rim(Shape shape, double radius) {
        Area rim = new Area(new BasicStroke((float) (radius * 0.35)).createStrokedShape(shape));
        rim.add(new Area(shape));
        return rim;
    }

    private static double inside(double place, double radius, double length) {
        double edge = radius * 1.2;
        return length < 2 * edge ? length / 2 : Math.min(Math.max(place, edge), length - edge);
    }

    private static Area frame(double x, double y, double toX, double toY, double radius) {
        Rectangle2D box = new Rectangle2D.Double();
        box.setFrameFromDiagonal(x, y, toX, toY);
        return new Area(new BasicStroke((float) (radius * 0.25)).createStrokedShape(box));
    }

    private static Area arrow(double x, double y, double toX, double toY, double radius) {
        double length = Math.hypot(toX - x, toY - y);
        if (length <= radius) {
            return new Area();
        }
        double head = radius * 0.9;
        Path2D tip = new Path2D.Double();
        tip.moveTo(length, 0);
        tip.lineTo(length - head, head * 0.55);
        tip.lineTo(length - head, -head * 0.55);
        tip.closePath();
        Line2D line = new Line2D.Double(0, 0, length - head, 0);
        Area whole = new Area(new BasicStroke((float) (radius * 0.25)).createStrokedShape(line));
        whole.add(new Area(tip));
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.rotate(toX - x, toY - y);
        return whole.createTransformedArea(place);
    }
}
