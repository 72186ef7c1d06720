package counterstep.editor.theme;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Patterns that tell areas apart without colour, drawn in lines so that they stay sharp. */
public enum Hatch {
    /** Nothing but the ground. */
    PLAIN,
    /** Lines that rise to the right. */
    RISING,
    /** Filled. */
    FULL,
    /** Lines across. */
    ACROSS,
    /** Dots. */
    DOTS,
    /** Lines that fall to the right. */
    FALLING,
    /** One line along the middle. */
    ALONG,
    /** Rising and falling lines. */
    CROSSED;

    private static final double APART = 5;

    /** The pattern of a number; after the last the first comes again. */
    public static Hatch of(int number) {
        return values()[number % values().length];
    }

    /** Fills a shape with the ground and, over it, the pattern; no outline. */
    public void fill(Graphics2D graphics, Shape shape, Color ground, Color ink) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setColor(this == FULL ? ink : ground);
        own.fill(shape);
        own.clip(shape);
        own.setColor(ink);
        own.setStroke(new BasicStroke(1.2f));
        Rectangle2D box = shape.getBounds2D();
        switch (this) {
            case PLAIN, FULL -> {}
            case RISING -> slanted(own, box, true);
            case FALLING -> slanted(own, box, false);
            case CROSSED -> {
                slanted(own, box, true);
                slanted(own, box, false);
            }
            case ACROSS -> across(own, box);
            case DOTS -> dots(own, box);
            case ALONG -> along(own, box);
        }
        own.dispose();
    }

    private static void slanted(Graphics2D graphics, Rectangle2D box, boolean rises) {
        double high = box.getHeight();
        double wide = box.getWidth();
        for (double at = -high; at < wide + high; at += APART) {
            double left = box.getX() + at;
            graphics.draw(
                    new Line2D.Double(
                            left,
                            rises ? box.getMaxY() : box.getY(),
                            left + high,
                            rises ? box.getY() : box.getMaxY()));
        }
    }

    private static void across(Graphics2D graphics, Rectangle2D box) {
        boolean upright = box.getHeight() > box.getWidth();
        double length = upright ? box.getHeight() : box.getWidth();
        for (double at = APART / 2; at < length; at += APART) {
            graphics.draw(
                    upright
                            ? new Line2D.Double(
                                    box.getX(), box.getY() + at, box.getMaxX(), box.getY() + at)
                            : new Line2D.Double(
                                    box.getX() + at, box.getY(), box.getX() + at, box.getMaxY()));
        }
    }

    private static void along(Graphics2D graphics, Rectangle2D box) {
        graphics.setStroke(new BasicStroke(2));
        graphics.draw(
                box.getHeight() > box.getWidth()
                        ? new Line2D.Double(
                                box.getCenterX(), box.getY(), box.getCenterX(), box.getMaxY())
                        : new Line2D.Double(
                                box.getX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
    }

    private static void dots(Graphics2D graphics, Rectangle2D box) {
        for (double down = APART / 2; down < box.getHeight(); down += APART) {
            for (double right = APART / 2; right < box.getWidth(); right += APART) {
                graphics.fill(
                        new Ellipse2D.Double(
                                box.getX() + right - 1, box.getY() + down - 1, 2.2, 2.2));
            }
        }
    }
}
