package counterstep.estimate;

/**
 * A line of a worksheet: an action, its time being that of the work and of the handling, times the
 * pieces (Yang and El-Haik 2003, table 10.5).
 *
 * @param what is done, in a few words
 * @param times how many pieces
 * @param work seconds for one
 * @param handling seconds for laying one aside or taking it up
 * @param source where these two are from, in a few words
 */
public record Row(String what, int times, double work, double handling, String source) {
    /** Seconds of the whole line. */
    public double seconds() {
        return times * (work + handling);
    }
}
