package counterstep.model;

/**
 * How short and how long the hands time of a step may come out, in seconds; with its likely time in
 * between these are a three-point estimate.
 *
 * @param least if all goes well, 0 or more
 * @param most if all goes badly, no less than that
 */
public record TimeRange(int least, int most) {
    /** Refuses a negative time and a range that ends before it begins. */
    public TimeRange {
        Require.atLeast(0, least, "the least time");
        Require.atLeast(least, most, "the greatest time");
    }
}
