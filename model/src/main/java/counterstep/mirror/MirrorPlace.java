package counterstep.mirror;

import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Phase;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;

/**
 * Where a counterstep goes in page order: after all that must be done before it and before all that
 * must be done after it; between these, before the first step that undoes something taken off
 * earlier. So the way back is the way there, reversed.
 */
final class MirrorPlace {
    private final Index index;
    private final Undoing undoing;
    private final MustPrecede must;

    MirrorPlace(Index index, Undoing undoing, MustPrecede must) {
        this.index = index;
        this.undoing = undoing;
        this.must = must;
    }

    /** The place among the steps, from 0, of a new step that undoes {@code off}. */
    int among(List<Step> steps, StepId off, List<Action> actions) {
        int end = end(steps);
        int first = Math.min(end, begin(steps, off));
        int last = end;
        for (int place = first; place < end; place++) {
            if (must.any(steps.get(place).actions(), actions)) {
                first = place + 1;
            }
        }
        for (int place = end - 1; place >= first; place--) {
            if (must.any(actions, steps.get(place).actions())) {
                last = place;
            }
        }
        int place = first;
        while (place < last && !undoesEarlier(steps.get(place).id(), off)) {
            place++;
        }
        // What is tightened at last is aligned before; a look at the mat comes after.
        boolean tightens = actions.stream().anyMatch(action -> action.verb() == Verb.TIGHTEN);
        while (!tightens && place > first && looksOnly(steps.get(place - 1))) {
            place--;
        }
        return place;
    }

    /** Whether a counterstep that stands at a place may do these actions too. */
    boolean suits(List<Step> steps, int place, List<Action> actions) {
        return steps.subList(0, place).stream().noneMatch(step -> must.any(actions, step.actions()))
                && steps.subList(place + 1, steps.size()).stream()
                        .noneMatch(step -> must.any(step.actions(), actions));
    }

    /** After the service and after the step itself. */
    private int begin(List<Step> steps, StepId off) {
        int begin = 0;
        for (int place = 0; place < steps.size(); place++) {
            Step step = steps.get(place);
            if (step.phase() == Phase.REASSEMBLY && begin > own(steps, off)) {
                return begin;
            }
            if (step.phase().compareTo(Phase.REASSEMBLY) < 0 || step.id().equals(off)) {
                begin = place + 1;
            }
        }
        return begin;
    }

    private static int own(List<Step> steps, StepId off) {
        for (int place = 0; place < steps.size(); place++) {
            if (steps.get(place).id().equals(off)) {
                return place;
            }
        }
        return -1;
    }

    /** Before the first step of verify after all reassembly. */
    private static int end(List<Step> steps) {
        int end = steps.size();
        while (end > 0 && steps.get(end - 1).phase() == Phase.VERIFY) {
            end--;
        }
        return end;
    }

    private boolean undoesEarlier(StepId back, StepId off) {
        List<StepId> undone = List.copyOf(undoing.offs(back));
        return !undone.isEmpty()
                && undone.stream().allMatch(step -> index.page(step) < index.page(off));
    }

    /** Whether a step puts nothing back. */
    static boolean looksOnly(Step step) {
        return step.actions().stream().allMatch(action -> action.verb().stateless());
    }
}
