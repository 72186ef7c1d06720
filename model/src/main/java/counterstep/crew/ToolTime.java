package counterstep.crew;

/**
 * What it takes to lay a tool down and take up another, in tenths of a second.
 *
 * @param tenths 0 or more
 */
public record ToolTime(int tenths) {
    /** Where the published time comes from, in short. */
    public static final String SOURCE = "Yang and El-Haik 2003, table 10.5";

    /**
     * 4.2 s, with the share for putting the tool back: tool acquisition in the worked service
     * example of Yang and El-Haik, Design for Six Sigma (2003), table 10.5, after Abbatiello
     * (1995).
     */
    public static final ToolTime PUBLISHED = new ToolTime(42);

    /** Refuses less than nothing. */
    public ToolTime {
        if (tenths < 0) {
            throw new IllegalArgumentException("a time below 0: " + tenths);
        }
    }

    /** In seconds. */
    public double seconds() {
        return tenths / 10.0;
    }
}
