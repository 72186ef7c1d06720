import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.Locale;

import javax.imageio.ImageIO;

/** Draws solids seen from above: the plan turned and foreshortened, heights straight up. */
final class Pen {
    static final int WIDTH = 1600;
    static final int HEIGHT = 1200;

    private final BufferedImage image =
            new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D g = image.createGraphics();
    private final AffineTransform plan;
    private final double rise;

    Pen(double scale, double degrees, double foreshortening, double x, double y) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Ink.GROUND);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        plan = AffineTransform.getTranslateInstance(x, y);
        plan.scale(scale, scale * foreshortening);
        plan.rotate(Math.toRadians(degrees));
        rise = scale * Math.sqrt(1 - foreshortening * foreshortening);
    }

    private Shape at(Shape shape, double z) {
        AffineTransform place = AffineTransform.getTranslateInstance(0, -z * rise);
        place.concatenate(plan);
        return place.createTransformedShape(shape);
    }

    private static BasicStroke width(double pixels) {
        return new BasicStroke((float) pixels, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    void prism(Shape shape, double from, double to, Color top, Color side) {
        double step = Math.max(0.4 / rise, 1e-3);
        g.setStroke(width(5));
        g.setColor(Ink.INK);
        for (double z = from; z < to; z += step) {
            g.draw(at(shape, z));
        }
        g.setColor(side);
        for (double z = from; z < to; z += step) {
            g.fill(at(shape, z));
        }
        g.setColor(top);
        g.fill(at(shape, to));
        line(shape, to, 1.9);
    }

    void plate(Shape shape, double z, Color fill) {
        g.setColor(fill);
        g.fill(at(shape, z));
        line(shape, z, 1.4);
    }

    void line(Shape shape, double z, double pixels) {
        g.setStroke(width(pixels));
        g.setColor(Ink.INK);
        g.draw(at(shape, z));
    }

    void recess(Shape shape, double z, double depth, Color wall, Color floor) {
        Shape before = g.getClip();
        g.clip(at(shape, z));
        g.setColor(wall);
        g.fill(at(shape, z));
        g.setColor(floor);
        g.fill(at(shape, z - depth));
        line(shape, z - depth, 1.4);
        g.setClip(before);
        line(shape, z, 2.2);
    }

    void cable(Shape path, double z, double thickness, Color fill) {
        Shape tube =
                new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                        .createStrokedShape(path);
        g.setColor(fill);
        g.fill(at(tube, z));
        line(tube, z, 1.7);
    }

    void screw(double x, double y, double z, double radius, Recess recess) {
        prism(Plan.disc(x, y, radius), z, z + radius * 0.45, Ink.METAL, Ink.METAL_SIDE);
        g.setColor(Ink.INK);
        g.fill(at(recess.shape(x, y, radius * 0.56), z + radius * 0.45));
    }

    /** A shape of width and height on the upright plane at that depth. */
    private Shape upright(Shape shape, double y) {
        AffineTransform place =
                new AffineTransform(
                        plan.getScaleX(),
                        plan.getShearY(),
                        0,
                        -rise,
                        plan.getShearX() * y + plan.getTranslateX(),
                        plan.getScaleY() * y + plan.getTranslateY());
        return place.createTransformedShape(shape);
    }

    void face(Shape shape, double y, Color fill) {
        g.setColor(fill);
        g.fill(upright(shape, y));
        g.setStroke(width(1.7));
        g.setColor(Ink.INK);
        g.draw(upright(shape, y));
    }

    /** An upright solid, from far to near. */
    void slab(Shape shape, double far, double near, Color front, Color side) {
        double step = 0.1;
        g.setStroke(width(5));
        g.setColor(Ink.INK);
        for (double y = far; y < near; y += step) {
            g.draw(upright(shape, y));
        }
        g.setColor(side);
        for (double y = far; y < near; y += step) {
            g.fill(upright(shape, y));
        }
        face(shape, near, front);
    }

    void probe(double x, double y, double z, double dx, double dy, Color fill) {
        Point2D tip = point(x, y, z);
        for (int layer = 0; layer < 2; layer++) {
            g.setColor(layer == 0 ? Ink.INK : fill);
            g.setStroke(
                    new BasicStroke(
                            layer == 0 ? 30 : 25, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(
                    new Line2D.Double(
                            tip.getX() + dx * 0.3,
                            tip.getY() + dy * 0.3,
                            tip.getX() + dx,
                            tip.getY() + dy));
        }
        g.setColor(Ink.INK);
        g.setStroke(width(5));
        g.draw(
                new Line2D.Double(
                        tip.getX(), tip.getY(), tip.getX() + dx * 0.26, tip.getY() + dy * 0.26));
    }

    Point2D point(double x, double y, double z) {
        Point2D place = plan.transform(new Point2D.Double(x, y), null);
        return new Point2D.Double(place.getX(), place.getY() - z * rise);
    }

    void mark(String what, double x, double y, double z) {
        Point2D place = point(x, y, z);
        System.out.printf(
                Locale.ROOT,
                "%-22s %.3f %.3f%n",
                what,
                place.getX() / WIDTH,
                place.getY() / HEIGHT);
    }

    void markFace(String what, double x, double z, double y) {
        mark(what, x, y, z);
    }

    void save(String folder, String name) throws IOException {
        File file = new File(folder, name);
        file.getParentFile().mkdirs();
        ImageIO.write(image, "png", file);
        System.out.println("^ " + file);
    }
}
