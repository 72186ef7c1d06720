package counterstep.mirror;

import counterstep.edit.Edit;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets the count of an action, and the number in the step's text where it stands there plainly.
 *
 * @param step the step
 * @param action its place in the step, from 0
 * @param count how many it shall be, 1 or more
 */
public record Recount(StepId step, int action, int count) implements Edit {
    @Override
    public String name() {
        return "Set to " + count;
    }

    @Override
    public Procedure apply(Procedure before) {
        CounterstepWords words = new CounterstepWords(Index.of(before));
        return before.withStep(of(before.step(step), action, count, words));
    }

    static Step of(Step step, int place, int count, CounterstepWords words) {
        List<Action> actions = new ArrayList<>(step.actions());
        Action old = actions.get(place);
        actions.set(place, old.draft().count(count).action());
        return step.draft()
                .actions(actions)
                .text(words.recounted(step.text(), old, count))
                .standing(Standing.WRITTEN)
                .step();
    }
}
