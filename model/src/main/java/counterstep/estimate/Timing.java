package counterstep.estimate;

import counterstep.handbook.WorkTimes;
import counterstep.model.Procedure;
import counterstep.plan.ExpectedTime;

/**
 * What the times of a document rest on.
 *
 * @param estimates of its steps, by figures
 * @param shares how much is measured and how much is estimated
 * @param expected the total by three-point estimates, down the page
 */
public record Timing(Estimates estimates, TimeShares shares, ExpectedTime expected) {
    /** Examines a document. */
    public static Timing of(Procedure procedure, WorkTimes figures) {
        Estimates estimates = Estimates.of(procedure, figures);
        return new Timing(
                estimates, TimeShares.of(procedure, estimates), ExpectedTime.total(procedure));
    }
}
