package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Torque;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One action that makes fasteners tight; seating them finger-tight does not.
 *
 * @param step where
 * @param action how
 * @param set which
 */
record Tightening(StepId step, Action action, FastenerSet set) {
    private static final Set<Verb> VERBS = Set.of(Verb.TIGHTEN, Verb.REINSTALL, Verb.FIT_NEW);

    /** Whether an action makes its fasteners tight. */
    static boolean is(Action action) {
        return VERBS.contains(action.verb()) && !action.fingerTight();
    }

    /** All of a procedure by set, in page order. */
    static Map<ItemId, List<Tightening>> bySet(Facts facts) {
        List<Tightening> all = new ArrayList<>();
        for (Step step : facts.procedure().steps()) {
            for (Action action : step.actions()) {
                if (is(action)
                        && action.item().flatMap(facts.index()::findItem).orElse(null)
                                instanceof FastenerSet set) {
                    all.add(new Tightening(step.id(), action, set));
                }
            }
        }
        return all.stream().collect(Collectors.groupingBy(one -> one.set().id()));
    }

    /** The torque that holds for it: its own, else the one of its set. */
    Optional<Torque> torque() {
        return action.torque().or(set::torque);
    }
}
