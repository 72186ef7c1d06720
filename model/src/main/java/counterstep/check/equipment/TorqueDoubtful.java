package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.handbook.StandardTorque;
import counterstep.model.FastenerSet;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Torque;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a soft seat takes by the chart, or close to what breaks the screw. Screws that form their
 * own thread are not in the chart and not doubted.
 */
final class TorqueDoubtful implements Check {
    private static final Set<Seat> SOFT = Set.of(Seat.PLASTIC, Seat.DIE_CAST, Seat.INSERT);

    /** Above this share of the breaking torque the scatter of friction may break a screw. */
    private static final double CLOSE = 0.9;

    /** A limit and why. */
    private record Limit(Torque most, String reason) {}

    @Override
    public About about() {
        return new About(
                "torque-doubtful",
                Severity.DOUBT,
                "A torque is more than plastic, die-cast or an insert takes, or close to what breaks"
                        + " the screw.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return Torques.all(facts)
                .filter(torques -> !TorqueAboveBreaking.breaks(torques.set(), torques.highest()))
                .flatMap(torques -> doubts(facts, torques));
    }

    private Stream<Finding> doubts(Facts facts, Torques torques) {
        FastenerSet set = torques.set();
        return Stream.concat(soft(set).stream(), close(set).stream())
                .filter(limit -> exceeds(torques.highest(), limit))
                .limit(1)
                .map(limit -> finding(facts, torques, limit));
    }

    private static Optional<Limit> soft(FastenerSet set) {
        return set.thread()
                .filter(thread -> SOFT.contains(set.seat()))
                .flatMap(
                        thread ->
                                StandardTorque.softLimit(thread)
                                        .map(most -> new Limit(most, into(thread, set.seat()))));
    }

    private static String into(ScrewThread thread, Seat seat) {
        String article = seat == Seat.INSERT ? "a " : "";
        return thread.label() + " into " + article + seat.word() + " takes at most ";
    }

    private static Optional<Limit> close(FastenerSet set) {
        return TorqueAboveBreaking.breaking(set)
                .map(
                        least ->
                                new Limit(
                                        new Torque(least.newtonMetres() * CLOSE),
                                        "the screw may break from "
                                                + least.label()
                                                + " on, so take at most "));
    }

    private static boolean exceeds(Optional<Torque> torque, Limit limit) {
        return torque.filter(high -> high.newtonMetres() > limit.most().newtonMetres()).isPresent();
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return SameTorqueAgain.fixes(facts, finding);
    }

    private Finding finding(Facts facts, Torques torques, Limit limit) {
        List<StepId> steps = torques.stepsFrom(Math.nextUp(limit.most().newtonMetres()));
        String message =
                torques.told(facts, torques.highest().orElseThrow(), steps)
                        + ": "
                        + limit.reason()
                        + rounded(limit.most())
                        + ".";
        return about().finding(message, steps, List.of(torques.set().id()));
    }

    /** Two figures, downwards: more would promise what the chart does not know. */
    private static String rounded(Torque most) {
        BigDecimal value = BigDecimal.valueOf(most.newtonMetres());
        return new Torque(value.round(new MathContext(2, RoundingMode.DOWN)).doubleValue()).label();
    }
}
