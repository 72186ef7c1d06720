package counterstep.timetable;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * Good timetables at once: several rules of priority, some of them shaken, each result pushed
 * against its end and back against its start until that helps no more (forward-backward
 * improvement; Li and Willis 1992, Tormos and Lova 2001, from memory). Only for projects where
 * tools do not matter.
 */
final class FirstTimetables {
    private static final int TRIES = 40;
    private static final int MOST_WORK = 200_000;

    private final Board forward;
    private final Board backward;
    private final Random random = new Random(1);
    private int[] best = {};
    private int length = Integer.MAX_VALUE;

    private FirstTimetables(Board forward, Board backward) {
        this.forward = forward;
        this.backward = backward;
    }

    /** The starts of the shortest found; at least one is tried even if it is to stop. */
    static int[] best(Board forward, Board backward, int atLeast, BooleanSupplier stopped) {
        FirstTimetables tried = new FirstTimetables(forward, backward);
        List<long[]> rules = List.of(tried.latestStart(), tried.latestFinish(), tried.mostToCome());
        int tries = Math.min(TRIES, 1 + MOST_WORK / (1 + forward.size * forward.size));
        for (int at = 0;
                at == 0 || at < rules.size() + tries && !tried.isOver(atLeast, stopped);
                at++) {
            tried.improve(at < rules.size() ? rules.get(at) : tried.shaken(rules.get(0)));
        }
        return tried.best;
    }

    private boolean isOver(int atLeast, BooleanSupplier stopped) {
        return length <= atLeast || stopped.getAsBoolean();
    }

    private long[] latestStart() {
        return priorities(activity -> -(long) forward.tail[activity] - forward.duration[activity]);
    }

    private long[] latestFinish() {
        return priorities(activity -> -(long) forward.tail[activity]);
    }

    private long[] mostToCome() {
        return priorities(activity -> -(long) forward.after[activity].cardinality());
    }

    private long[] shaken(long[] rule) {
        long most = 1 + Arrays.stream(rule).map(Math::abs).max().orElse(0);
        long by = Math.max(2, most / 4);
        return priorities(activity -> rule[activity] + (long) (random.nextDouble() * by));
    }

    private long[] priorities(IntToLongFunction rule) {
        return IntStream.range(0, forward.size).mapToLong(rule).toArray();
    }

    private void improve(long[] priority) {
        int[] starts = ByPriority.starts(forward, priority);
        int now = length(starts);
        int before = Integer.MAX_VALUE;
        while (now < before) {
            keep(starts, now);
            before = now;
            int[] back = ByPriority.starts(backward, lastFirst(starts));
            starts = ByPriority.starts(forward, lastFirst(back));
            now = length(starts);
        }
        keep(starts, now);
    }

    private void keep(int[] starts, int now) {
        if (now < length) {
            length = now;
            best = starts;
        }
    }

    private long[] lastFirst(int... starts) {
        return priorities(activity -> -(long) starts[activity] - forward.duration[activity]);
    }

    private int length(int... starts) {
        int length = 0;
        for (int activity = 0; activity < starts.length; activity++) {
            length = Math.max(length, starts[activity] + forward.duration[activity]);
        }
        return length;
    }
}
