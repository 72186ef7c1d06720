package counterstep.timetable;

import java.util.List;
import java.util.Optional;

/**
 * What runs without interruption.
 *
 * @param duration from its start until what comes after it may start
 * @param needs what it asks of which resource; none lasts longer than the activity
 * @param tools what whoever does it takes in hand; empty for bare hands
 */
public record Activity(int duration, List<Need> needs, Optional<Tools> tools) {
    /** Refuses a need beyond its time, and two of one resource; copies the list. */
    public Activity {
        needs = List.copyOf(needs);
        if (needs.stream().map(Need::resource).distinct().count() < needs.size()) {
            throw new IllegalArgumentException("two needs of one resource");
        }
        for (Need need : needs) {
            if (need.time() > duration) {
                throw new IllegalArgumentException("a need for " + need.time() + " of " + duration);
            }
        }
    }

    /** One that is done with bare hands. */
    public static Activity plain(int duration, List<Need> needs) {
        return new Activity(duration, needs, Optional.empty());
    }

    /**
     * Tools by number.
     *
     * @param first taken in hand before it starts
     * @param last in hand when the hands are done
     * @param within changes between the two; their time is part of the duration
     */
    public record Tools(int first, int last, int within) {
        /** Refuses numbers below 0, and another tool at the end without a change. */
        public Tools {
            if (first < 0 || last < 0 || within < (first == last ? 0 : 1)) {
                throw new IllegalArgumentException(
                        "no tools: %d, %d, %d".formatted(first, last, within));
            }
        }
    }

    /** When it gives back the last of what it needs. */
    int needed() {
        return needs.stream().filter(need -> need.work() > 0).mapToInt(Need::time).max().orElse(0);
    }

    /** Whether it keeps all it needs until its end. */
    boolean keepsAll() {
        return needs.stream().allMatch(need -> need.work() == 0 || need.time() == duration);
    }
}
