package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.edit.ChangeItem;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Torque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every action that makes a set tight carries the torque of its set. Without one of its own it has
 * that of its set, so what is at fault is another torque, or none at all while other steps on the
 * same set state one.
 */
final class TorqueNotStatedAgain implements Check {
    @Override
    public About about() {
        return new About(
                "torque-not-stated-again",
                Severity.DOUBT,
                "A step tightens fasteners with another torque than is stated for them, or with"
                        + " none.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return Torques.all(facts).flatMap(torques -> finding(facts, torques).stream());
    }

    private Optional<Finding> finding(Facts facts, Torques torques) {
        return stated(torques).flatMap(torque -> finding(facts, torques, torque));
    }

    /** What is stated for the set: with it, else in the first step that states any. */
    private static Optional<Torque> stated(Torques torques) {
        return torques.set()
                .torque()
                .or(
                        () ->
                                torques.tightenings().stream()
                                        .flatMap(TorqueNotStatedAgain::own)
                                        .findFirst());
    }

    private static Stream<Torque> own(Tightening tightening) {
        return Optional.of(tightening.action()).flatMap(Action::torque).stream();
    }

    private Optional<Finding> finding(Facts facts, Torques torques, Torque stated) {
        List<Tightening> others =
                torques.tightenings().stream()
                        .filter(one -> !one.torque().equals(Optional.of(stated)))
                        .toList();
        if (others.isEmpty()) {
            return Optional.empty();
        }
        List<StepId> steps = others.stream().map(Tightening::step).toList();
        String told = others.get(0).torque().map(Torque::label).orElse("no torque");
        String message =
                facts.phrases().steps(steps)
                        + (others.size() == 1 ? " tightens " : " tighten ")
                        + facts.phrases().all(torques.set().id()).text()
                        + " with "
                        + told
                        + "; stated is "
                        + stated.label()
                        + where(facts, torques)
                        + ".";
        return Optional.of(
                about().finding(Phrases.sentence(message), steps, List.of(torques.set().id())));
    }

    /** Where the torque is stated, if not with the set. */
    private static String where(Facts facts, Torques torques) {
        if (torques.set().torque().isPresent()) {
            return " for them";
        }
        return torques.tightenings().stream()
                .filter(one -> one.action().torque().isPresent())
                .map(one -> " in " + facts.phrases().step(one.step()))
                .findFirst()
                .orElse("");
    }

    /** The steps get the torque of the set; a set without one gets that of its steps. */
    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return Stream.concat(
                SameTorqueAgain.fixes(facts, finding),
                Torques.all(facts)
                        .filter(torques -> finding.items().contains(torques.set().id()))
                        .filter(torques -> torques.set().torque().isEmpty())
                        .flatMap(
                                torques -> stated(torques).stream().map(one -> fix(torques, one))));
    }

    private static Fix fix(Torques torques, Torque torque) {
        FastenerSet set = torques.set().withTorque(Optional.of(torque));
        return new Fix("Set to " + torque.label(), new ChangeItem(set));
    }
}
