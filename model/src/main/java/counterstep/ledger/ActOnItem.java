package counterstep.ledger;

import counterstep.edit.Edit;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/**
 * Adds the action to a step that fits the state of an item there: what is on is taken off, what is
 * out is put back. A step without title is named after it.
 *
 * @param step which step goes on
 * @param item what it acts on
 */
public record ActOnItem(StepId step, ItemId item) implements Edit {
    @Override
    public String name() {
        return "Add action";
    }

    @Override
    public Procedure apply(Procedure before) {
        Index index = Index.of(before);
        Action action = NextAction.of(Ledger.of(index), index, item, step);
        List<Step> steps =
                before.steps().stream()
                        .map(each -> each.id().equals(step) ? with(each, action, index) : each)
                        .toList();
        return before.draft().steps(steps).procedure();
    }

    private static Step with(Step step, Action action, Index index) {
        List<Action> actions = new ArrayList<>(step.actions());
        actions.add(action);
        StepDraft changed = step.draft().actions(actions);
        return (step.title().isBlank() ? changed.title(title(action, index)) : changed).step();
    }

    private static String title(Action action, Index index) {
        String verb = action.verb().word();
        String name = index.item(action.item().orElseThrow()).name();
        return Character.toUpperCase(verb.charAt(0)) + verb.substring(1) + " " + name;
    }
}
