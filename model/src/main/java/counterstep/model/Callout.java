package counterstep.model;

import java.util.Optional;

/**
 * A number on a photo, in fractions of its width and height from the upper left corner.
 *
 * @param number 1 or more, as printed
 * @param shape point, box or arrow
 * @param x place of the number, 0 to 1
 * @param y place of the number, 0 to 1
 * @param toX other corner of a box, head of an arrow; equal to x for a point
 * @param toY other corner of a box, head of an arrow; equal to y for a point
 * @param item what it points at; the actions of the step on it carry the number
 * @param extras unknown fields
 */
public record Callout(
        int number,
        CalloutShape shape,
        double x,
        double y,
        double toX,
        double toY,
        Optional<ItemId> item,
        Extras extras) {
    /** Refuses a number below 1 and a place outside the photo. */
    public Callout {
        Require.atLeast(1, number, "a callout number");
        for (double fraction : new double[] {x, y, toX, toY}) {
            if (!(fraction >= 0 && fraction <= 1)) {
                throw new IllegalArgumentException("a callout at " + fraction);
            }
        }
    }
}
