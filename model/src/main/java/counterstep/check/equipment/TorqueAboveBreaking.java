package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.handbook.BreakingTorque;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.ScrewThread;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Torque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A screw may break at the least breaking torque of its thread and property class. */
final class TorqueAboveBreaking implements Check {
    @Override
    public About about() {
        return new About(
                "torque-above-breaking",
                Severity.ERROR,
                "A torque is so high that the screw may break.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return Torques.all(facts)
                .filter(torques -> breaks(torques.set(), torques.highest()))
                .map(torques -> finding(facts, torques));
    }

    /** The least torque that may break the screws of a set; empty where no table tells. */
    static Optional<Torque> breaking(FastenerSet set) {
        return set.thread()
                .filter(thread -> set.form() == FastenerForm.SCREW)
                .flatMap(thread -> BreakingTorque.of(thread, set.propertyClass()));
    }

    static boolean breaks(FastenerSet set, Optional<Torque> torque) {
        return breaking(set)
                .flatMap(least -> torque.filter(high -> reaches(high, least)))
                .isPresent();
    }

    private static boolean reaches(Torque torque, Torque least) {
        return torque.newtonMetres() >= least.newtonMetres();
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return SameTorqueAgain.fixes(facts, finding);
    }

    private Finding finding(Facts facts, Torques torques) {
        FastenerSet set = torques.set();
        Torque least = breaking(set).orElseThrow();
        List<StepId> steps = torques.stepsFrom(least.newtonMetres());
        String size = set.thread().map(ScrewThread::label).orElse("") + " " + set.propertyClass();
        String message =
                torques.told(facts, torques.highest().orElseThrow(), steps)
                        + ": a screw "
                        + size
                        + " may break from "
                        + least.label()
                        + " on.";
        return about().finding(message, steps, List.of(set.id()));
    }
}
