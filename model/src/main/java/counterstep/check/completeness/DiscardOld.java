package counterstep.check.completeness;

import counterstep.edit.Edit;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import counterstep.words.Phrasing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Throws the old ones away in the step that fits or puts some on, and fits new ones there.
 *
 * @param step which
 * @param item of what
 * @param count how many are thrown away
 */
record DiscardOld(StepId step, ItemId item, int count) implements Edit {
    @Override
    public String name() {
        return "Discard the old";
    }

    @Override
    public Procedure apply(Procedure before) {
        Step old = before.step(step);
        List<Action> actions = new ArrayList<>();
        for (Action action : old.actions()) {
            boolean on = action.verb() == Verb.FIT_NEW || action.verb() == Verb.REINSTALL;
            if (!on || !action.item().equals(Optional.of(item))) {
                actions.add(action);
                continue;
            }
            if (actions.stream().noneMatch(this::discards)) {
                actions.add(Action.of(Verb.DISCARD, item, count));
            }
            actions.add(fitted(action));
        }
        String text = sentence(before) + " " + old.text();
        return before.withStep(
                old.draft().actions(actions).text(text.strip()).standing(Standing.WRITTEN).step());
    }

    private boolean discards(Action action) {
        return action.verb() == Verb.DISCARD && action.item().equals(Optional.of(item));
    }

    private static Action fitted(Action action) {
        return action.draft().verb(Verb.FIT_NEW).action();
    }

    private String sentence(Procedure procedure) {
        return Phrasing.of(procedure.titleBlock().language())
                .instruction(
                        Action.of(Verb.DISCARD, item, count),
                        Optional.of(Index.of(procedure).item(item)));
    }
}
