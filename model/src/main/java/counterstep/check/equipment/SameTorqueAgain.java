package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.ChangeStep;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Step;
import counterstep.model.Torque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Gives the steps of a finding the torque that their set states. */
final class SameTorqueAgain {
    private SameTorqueAgain() {}

    static Stream<Fix> fixes(Facts facts, Finding finding) {
        return finding.items().stream()
                .map(facts.index()::item)
                .filter(FastenerSet.class::isInstance)
                .map(FastenerSet.class::cast)
                .filter(set -> set.torque().isPresent())
                .map(set -> fix(facts, finding, set));
    }

    private static Fix fix(Facts facts, Finding finding, FastenerSet set) {
        Torque torque = set.torque().orElseThrow();
        List<Edit> edits =
                finding.steps().stream()
                        .map(facts.index()::step)
                        .map(step -> changed(step, set))
                        .<Edit>map(step -> new ChangeStep(step, "Set torque"))
                        .toList();
        return new Fix("Set to " + torque.label(), new Edits("Set torque", edits));
    }

    private static Step changed(Step step, FastenerSet set) {
        List<Action> actions =
                step.actions().stream()
                        .map(action -> tightens(action, set) ? stating(action, set) : action)
                        .toList();
        return step.draft().actions(actions).step();
    }

    private static boolean tightens(Action action, FastenerSet set) {
        return Tightening.is(action)
                && action.torque().isPresent()
                && action.item().equals(Optional.of(set.id()));
    }

    private static Action stating(Action action, FastenerSet set) {
        return action.draft().torque(set.torque()).action();
    }
}
