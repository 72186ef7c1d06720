package counterstep.export.shape;

import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.Optional;

/**
 * A screw seen from the side, head to the left, in mm: the origin lies on its axis at the outer end
 * of the head, y down. Length and thread are the true ones; the proportions of the head are those
 * usual for its kind (from memory).
 *
 * @param head outline of the head; without area where there is none
 * @param shank outline of the shank
 * @param thread lines across the shank
 * @param width from end to end
 * @param height of the head, or of the shank where it has none
 */
public record ScrewSide(Shape head, Shape shank, Shape thread, double width, double height) {
    /** How many lines tell a thread at most; a long screw is not drawn denser. */
    private static final int MOST_LINES = 40;

    /** The screw of a set; empty where it is no screw or thread or length is not stated. */
    public static Optional<ScrewSide> of(FastenerSet set) {
        if (set.form() != FastenerForm.SCREW || set.length().isEmpty() || set.thread().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                of(set.head(), set.thread().get().diameter(), set.length().getAsDouble()));
    }

    /**
     * A screw of a head.
     *
     * @param diameter of its thread, in mm
     * @param length from under the head, overall where countersunk, in mm
     */
    private static ScrewSide of(Head head, double diameter, double length) {
        Proportion of = proportion(head);
        double high = of.height() * diameter;
        double radius = of.width() * diameter / 2;
        double end = of.sunk() ? length : high + length;
        double from = Math.min(high, end);
        Shape top =
                of.sunk()
                        ? Outline.closed(
                                0, -radius, from, -diameter / 2, from, diameter / 2, 0, radius)
                        : Outline.roundBox(0, -radius, high, 2 * radius, diameter * of.round());
        return new ScrewSide(
                top,
                Outline.box(from, -diameter / 2, end - from, diameter),
                lines(from, end, diameter),
                end,
                2 * Math.max(radius, diameter / 2));
    }

    private static Path2D lines(double from, double end, double diameter) {
        Path2D lines = new Path2D.Double();
        double apart = Math.max(diameter * 0.42, (end - from) / MOST_LINES);
        for (double at = from + apart; at < end - apart / 2; at += apart) {
            lines.moveTo(at - diameter * 0.1, -diameter / 2);
            lines.lineTo(at + diameter * 0.1, diameter / 2);
        }
        return lines;
    }

    /** In diameters of the thread: how wide and high the head is, and how round its corners. */
    private record Proportion(double width, double height, double round, boolean sunk) {}

    private static Proportion proportion(Head head) {
        return switch (head) {
            case PAN -> new Proportion(2, 0.7, 0.25, false);
            case COUNTERSUNK, RAISED_COUNTERSUNK -> new Proportion(1.9, 0.55, 0, true);
            case CYLINDER -> new Proportion(1.6, 1, 0.1, false);
            case BUTTON -> new Proportion(1.9, 0.55, 0.5, false);
            case HEXAGON -> new Proportion(1.8, 0.7, 0.05, false);
            case FLANGE -> new Proportion(2.2, 0.8, 0.15, false);
            case NONE -> new Proportion(0, 0, 0, false);
        };
    }
}
