package counterstep.editor.timetable;

import java.util.stream.IntStream;

/**
 * Where a time lies on the axis.
 *
 * @param width of the whole drawing, in pixels
 * @param seconds how long the work takes
 */
record Scale(int width, double seconds) {
    private static final int LEFT = 8;
    private static final int RIGHT = 16;
    private static final int LEAST_BETWEEN_TICKS = 56;
    private static final int[] MINUTES = {1, 2, 5, 10, 20, 30, 60, 120, 240, 480, 1440, 10080};

    double x(double at) {
        return LEFT + at * pixelsPerSecond();
    }

    /** Where the drawing ends. */
    double right() {
        return width;
    }

    private double pixelsPerSecond() {
        return Math.max(1, width - LEFT - RIGHT) / Math.max(1, seconds);
    }

    /** A round number of minutes that leaves room for figures; longer work has fewer of them. */
    int secondsBetweenTicks() {
        return IntStream.of(MINUTES)
                .map(minutes -> minutes * 60)
                .filter(apart -> apart * pixelsPerSecond() >= LEAST_BETWEEN_TICKS)
                .findFirst()
                .orElse(Math.max(60, (int) (seconds / 8)));
    }
}
