package counterstep.editor.canvas;

import java.util.List;

/**
 * The first photo of a step with its numbers.
 *
 * @param file its name in the photo folder
 * @param quarterTurns clockwise turns before it is shown
 * @param spots the numbers on it
 */
record PhotoFace(String file, int quarterTurns, List<Spot> spots) {
    /** Copies the list. */
    PhotoFace {
        spots = List.copyOf(spots);
    }

    /**
     * A number on it.
     *
     * @param number as printed
     * @param x place in fractions of the width
     * @param y place in fractions of the height
     */
    record Spot(int number, double x, double y) {}
}
