package counterstep.model;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How a joint is released.
 *
 * @param method heat, pull, solvent, desoldering, blade
 * @param celsius temperature at the joint; empty = not stated
 * @param seconds how long; empty = not stated
 * @param limitNearby what near it must stay cooler, 'cell below 60 °C'; may be empty
 */
public record Release(
        ReleaseMethod method, OptionalDouble celsius, OptionalInt seconds, String limitNearby) {
    /** Refuses a negative time and a temperature that is no number. */
    public Release {
        if (celsius.isPresent()) {
            Require.finite(celsius.getAsDouble(), "a temperature");
        }
        if (seconds.isPresent()) {
            Require.atLeast(0, seconds.getAsInt(), "a time");
        }
    }
}
