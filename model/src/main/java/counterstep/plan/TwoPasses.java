package counterstep.plan;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Forward for the earliest times, backward for the latest; counted in long, so exact. */
final class TwoPasses {
    private final List<Step> steps;
    private final Precedence precedence;
    private final Map<StepId, Long> duration = new HashMap<>();
    private final Map<StepId, Long> earliestFinish = new HashMap<>();
    private final Map<StepId, Long> latestStart = new HashMap<>();
    private final long length;

    TwoPasses(Procedure procedure, Precedence precedence) {
        this.steps = procedure.steps();
        this.precedence = precedence;
        steps.forEach(step -> duration.put(step.id(), Durations.exact(step)));
        List<StepId> order = precedence.topological();
        for (StepId step : order) {
            earliestFinish.put(step, earliestStart(step) + duration.get(step));
        }
        length = earliestFinish.values().stream().mapToLong(Long::longValue).max().orElse(0);
        for (int place = order.size() - 1; place >= 0; place--) {
            StepId step = order.get(place);
            latestStart.put(step, latestFinish(step) - duration.get(step));
        }
    }

    long length() {
        return length;
    }

    long earliestStart(StepId step) {
        return precedence.directlyBefore(step).stream()
                .mapToLong(earliestFinish::get)
                .max()
                .orElse(0);
    }

    long earliestFinish(StepId step) {
        return earliestFinish.get(step);
    }

    long latestStart(StepId step) {
        return latestStart.get(step);
    }

    private long latestFinish(StepId step) {
        return precedence.directlyAfter(step).stream()
                .mapToLong(latestStart::get)
                .min()
                .orElse(length);
    }

    private long nextEarliestStart(StepId step) {
        return precedence.directlyAfter(step).stream()
                .mapToLong(this::earliestStart)
                .min()
                .orElse(length);
    }

    /** Whether a step has no total float; asked of the exact times. */
    boolean critical(StepId step) {
        return latestStart(step) + duration.get(step) == earliestFinish(step);
    }

    Map<StepId, StepTimes> times() {
        Map<StepId, StepTimes> times = new LinkedHashMap<>();
        steps.forEach(step -> times.put(step.id(), times(step.id())));
        return times;
    }

    private StepTimes times(StepId step) {
        long start = earliestStart(step);
        return new StepTimes(
                Durations.capped(start),
                Durations.capped(earliestFinish(step)),
                Durations.capped(latestStart(step)),
                Durations.capped(latestFinish(step)),
                Durations.capped(latestStart(step) - start),
                Durations.capped(nextEarliestStart(step) - earliestFinish(step)));
    }
}
