package counterstep.model;

/**
 * Where the writer put a step on the canvas: its upper left corner at 100 %.
 *
 * @param x to the right, in pixels
 * @param y down, in pixels
 */
public record CanvasPoint(double x, double y) {
    /** Refuses what is no number. */
    public CanvasPoint {
        Require.finite(x, "x");
        Require.finite(y, "y");
    }
}
