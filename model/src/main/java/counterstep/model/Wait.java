package counterstep.model;

/**
 * Time that passes without hands.
 *
 * @param seconds how long, 0 or more
 * @param attendance whether somebody must stay near
 */
public record Wait(int seconds, Attendance attendance) {
    /** Refuses a negative time. */
    public Wait {
        Require.atLeast(0, seconds, "a wait");
    }
}
