package counterstep.cli;

import counterstep.estimate.Estimates;
import counterstep.estimate.TimeShares;
import counterstep.model.Procedure;
import counterstep.model.Step;
import java.util.Optional;

/**
 * What is measured and what is estimated in a plan.
 *
 * @param stated the document, with the times that it states
 * @param estimates of its steps
 * @param shares how much of the time is which
 * @param counted whether the estimates count where no time is stated
 */
record Estimated(Procedure stated, Estimates estimates, TimeShares shares, boolean counted) {
    static Estimated of(Procedure stated, EstimateOption option) {
        Estimates estimates = Estimates.of(stated, option.workTimes());
        return new Estimated(stated, estimates, TimeShares.of(stated, estimates), option.counted());
    }

    /** What is planned: the document, with the estimates if they count. */
    Procedure planned() {
        return counted ? estimates.forUntimed(stated).apply(stated) : stated;
    }

    /** Where the time of a step in the plan is from; empty where it states none. */
    Optional<String> source(Step step) {
        if (reckoned(step)) {
            return Optional.of("figures");
        }
        return step.seconds().isPresent()
                ? Optional.of(step.timeSource().word())
                : Optional.empty();
    }

    /** Whether the time of a step in the plan is an estimate by the figures. */
    boolean reckoned(Step step) {
        return counted
                && stated.step(step.id()).seconds().isEmpty()
                && estimates.of(step.id()).isPresent();
    }
}
