package counterstep.plan;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The longest chains of steps that the links demand, as in the critical path method (Kelley and
 * Walker 1959, from memory): steps on nodes, as many hands as wanted. Without any link it is the
 * longest step.
 *
 * @param seconds length of the whole; at most the greatest {@code int}
 * @param times of each step, in page order
 * @param paths the critical paths, each from a step that nothing precedes to one that nothing
 *     follows; compared step by step, the one whose step is earlier in page order comes first; at
 *     most {@link #MOST_PATHS}
 * @param morePaths there are more than these
 */
public record CriticalPath(
        int seconds, Map<StepId, StepTimes> times, List<List<StepId>> paths, boolean morePaths) {
    /** How many critical paths are listed at most. */
    public static final int MOST_PATHS = 100;

    /** Keeps the order of the times; copies the paths. */
    public CriticalPath {
        times = Collections.unmodifiableMap(new LinkedHashMap<>(times));
        paths = paths.stream().map(List::copyOf).toList();
    }

    /**
     * Plans a document along its links, in time linear in steps and links.
     *
     * @throws IllegalStateException if the links contain a loop; ask {@link Precedence#loop()}
     *     first
     */
    public static CriticalPath of(Procedure procedure, Precedence precedence) {
        TwoPasses passes = new TwoPasses(procedure, precedence);
        CriticalChains chains = new CriticalChains(passes, precedence, MOST_PATHS);
        return new CriticalPath(
                Durations.capped(passes.length()), passes.times(), chains.found(), chains.more());
    }

    /** Whether a step lies on a critical path: its total float is 0. */
    public boolean critical(StepId step) {
        StepTimes found = times.get(step);
        if (found == null) {
            throw new IllegalArgumentException("no step " + step);
        }
        return found.critical();
    }
}
