package counterstep.estimate;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeSource;
import counterstep.plan.Durations;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of the time of a document is measured and how much is estimated, in seconds.
 *
 * @param measured hands time that the writer measured
 * @param estimated hands time that the writer estimated
 * @param reckoned hands time of steps that state none, by the figures
 * @param waits waiting time, as the document asks for
 * @param untimed steps that state no hands time, in page order
 * @param unknown those of them that have no estimate either
 */
public record TimeShares(
        int measured,
        int estimated,
        int reckoned,
        int waits,
        List<StepId> untimed,
        List<StepId> unknown) {
    /** Copies the lists. */
    public TimeShares {
        untimed = List.copyOf(untimed);
        unknown = List.copyOf(unknown);
    }

    /** Adds up a document. */
    public static TimeShares of(Procedure procedure, Estimates estimates) {
        long measured = 0;
        long estimated = 0;
        long reckoned = 0;
        long waits = 0;
        List<StepId> untimed = new ArrayList<>();
        List<StepId> unknown = new ArrayList<>();
        for (Step step : procedure.steps()) {
            waits += Durations.waitSeconds(step);
            boolean tried = step.timeSource() == TimeSource.MEASURED;
            measured += tried ? Durations.handsSeconds(step) : 0;
            estimated += tried ? 0 : Durations.handsSeconds(step);
            if (step.seconds().isEmpty()) {
                Optional<Estimate> found = estimates.of(step.id());
                reckoned += found.map(Estimate::seconds).orElse(0);
                untimed.add(step.id());
                if (found.isEmpty()) {
                    unknown.add(step.id());
                }
            }
        }
        return new TimeShares(
                capped(measured),
                capped(estimated),
                capped(reckoned),
                capped(waits),
                untimed,
                unknown);
    }

    private static int capped(long seconds) {
        return (int) Math.min(Integer.MAX_VALUE, seconds);
    }
}
