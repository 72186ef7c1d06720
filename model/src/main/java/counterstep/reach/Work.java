package counterstep.reach;

import counterstep.ledger.Turn;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What each step of a document does, as far as leaving it out is concerned. */
final class Work {
    private final Map<StepId, Step> steps = new LinkedHashMap<>();

    Work(Procedure procedure) {
        procedure.steps().forEach(step -> steps.put(step.id(), step));
    }

    List<Step> steps() {
        return List.copyOf(steps.values());
    }

    /** The items that it acts on. */
    Set<ItemId> items(StepId step) {
        return steps.get(step).actions().stream()
                .map(Action::item)
                .flatMap(Optional::stream)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Those of them that it changes. */
    Set<ItemId> changed(StepId step) {
        return steps.get(step).actions().stream()
                .filter(action -> changes(action.verb()))
                .map(Action::item)
                .flatMap(Optional::stream)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Whether it acts on no item, so that no fact tells what it is good for. */
    boolean unattached(StepId step) {
        return items(step).isEmpty();
    }

    /** Whether it puts back and takes nothing off. */
    boolean onlyPutsBack(StepId step) {
        List<Turn> turns =
                steps.get(step).actions().stream()
                        .map(action -> Turn.of(action.verb()))
                        .filter(turn -> turn != Turn.NEITHER)
                        .toList();
        return !turns.isEmpty() && !turns.contains(Turn.APART);
    }

    /** Whether it stands before the putting back begins. */
    boolean opensTheWay(StepId step) {
        return steps.get(step).phase().compareTo(Phase.REASSEMBLY) < 0 && !onlyPutsBack(step);
    }

    boolean is(StepId step, Phase phase) {
        return steps.get(step).phase() == phase;
    }

    /** Whether somebody looks whether the device works, or something on it is right. */
    boolean checks(StepId step) {
        return steps.get(step).actions().stream().anyMatch(action -> action.verb() == Verb.CHECK);
    }

    private static boolean changes(Verb verb) {
        return !verb.stateless() && verb != Verb.PROVE_DEAD;
    }
}
