package counterstep.timetable;

/**
 * What an activity asks of one resource from its start on.
 *
 * @param resource which, by its place in the project
 * @param amount how many units of it
 * @param time for how long, at most as long as the activity lasts
 */
public record Need(int resource, int amount, int time) {
    /** Refuses less than nothing. */
    public Need {
        if (resource < 0 || amount < 0 || time < 0) {
            throw new IllegalArgumentException(
                    "no need: %d of resource %d for %d".formatted(amount, resource, time));
        }
    }

    /** Units times time; 0 for a need that asks for nothing. */
    long work() {
        return (long) amount * time;
    }
}
