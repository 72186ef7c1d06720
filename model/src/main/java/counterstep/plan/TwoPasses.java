package counterstep.plan;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Forward for the earliest times, backward for the latest; counted in long, so exact. Steps go by
 * their places in page order.
 */
final class TwoPasses {
    private final Precedence precedence;
    private final long[] duration;
    private final long[] earliestStart;
    private final long[] latestFinish;
    private final long length;

    TwoPasses(Procedure procedure, Precedence precedence) {
        this(procedure.steps().stream().mapToLong(Durations::exact).toArray(), precedence);
    }

    /** With durations in any unit, in page order. */
    TwoPasses(long[] duration, Precedence precedence) {
        this.precedence = precedence;
        this.duration = duration.clone();
        earliestStart = new long[duration.length];
        latestFinish = new long[duration.length];
        int[] order = precedence.topological().stream().mapToInt(precedence::page).toArray();
        long last = 0;
        for (int page : order) {
            for (int before : precedence.directlyBefore(page)) {
                earliestStart[page] = Math.max(earliestStart[page], earliestFinish(before));
            }
            last = Math.max(last, earliestFinish(page));
        }
        length = last;
        for (int place = order.length - 1; place >= 0; place--) {
            int page = order[place];
            latestFinish[page] = length;
            for (int after : precedence.directlyAfter(page)) {
                latestFinish[page] = Math.min(latestFinish[page], latestStart(after));
            }
        }
    }

    long length() {
        return length;
    }

    long earliestFinish(int page) {
        return earliestStart[page] + duration[page];
    }

    long latestStart(int page) {
        return latestFinish[page] - duration[page];
    }

    private long nextEarliestStart(int page) {
        long next = Long.MAX_VALUE;
        for (int after : precedence.directlyAfter(page)) {
            next = Math.min(next, earliestStart[after]);
        }
        return next == Long.MAX_VALUE ? length : next;
    }

    /** Whether a step has no total float; asked of the exact times. */
    boolean critical(int page) {
        return latestFinish[page] == earliestFinish(page);
    }

    /** The critical steps directly after a critical one that start the moment it ends. */
    List<Integer> criticalAfter(int page) {
        return precedence.directlyAfter(page).stream()
                .filter(this::critical)
                .filter(later -> latestStart(later) == earliestFinish(page))
                .toList();
    }

    Map<StepId, StepTimes> times() {
        Map<StepId, StepTimes> times = new LinkedHashMap<>();
        List<StepId> steps = precedence.steps();
        for (int page = 0; page < steps.size(); page++) {
            times.put(steps.get(page), times(page));
        }
        return times;
    }

    private StepTimes times(int page) {
        return new StepTimes(
                Durations.capped(earliestStart[page]),
                Durations.capped(earliestFinish(page)),
                Durations.capped(latestStart(page)),
                Durations.capped(latestFinish[page]),
                Durations.capped(latestStart(page) - earliestStart[page]),
                Durations.capped(nextEarliestStart(page) - earliestFinish(page)));
    }
}
