package counterstep.plan;

import counterstep.model.Action;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Wait;
import java.util.Optional;

/**
 * How long steps take, in whole seconds. A sum beyond what an {@code int} holds (68 years) is told
 * as the greatest {@code int}.
 */
public final class Durations {
    private Durations() {}

    /** The time of a step: its hands time, none stated counting 0, and all its waits. */
    public static int seconds(Step step) {
        return capped(exact(step));
    }

    /** The time of all steps one after the other. */
    public static int total(Procedure procedure) {
        return capped(procedure.steps().stream().mapToLong(Durations::exact).sum());
    }

    /** Hands time alone, the waits left out. */
    public static int handsSeconds(Step step) {
        return step.seconds().orElse(0);
    }

    /** The waits of a step alone. */
    public static int waitSeconds(Step step) {
        return capped(exact(step) - handsSeconds(step));
    }

    static long exact(Step step) {
        long waits =
                step.actions().stream()
                        .map(Action::waiting)
                        .flatMap(Optional::stream)
                        .mapToLong(Wait::seconds)
                        .sum();
        return handsSeconds(step) + waits;
    }

    static int capped(long seconds) {
        return (int) Math.min(Integer.MAX_VALUE, seconds);
    }
}
