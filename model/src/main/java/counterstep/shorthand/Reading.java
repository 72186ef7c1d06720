package counterstep.shorthand;

import counterstep.edit.Edit;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/**
 * What was understood of a typed line.
 *
 * @param step the step that the edit makes or changes; empty where it changes none
 * @param newStep whether it makes that step
 * @param title the title of a new step, or the words that are added to the text of an old one; may
 *     be empty
 * @param actions the actions that it gets
 * @param explanation what the edit will do, in one line
 * @param edit what the line asks for, undone as one
 */
public record Reading(
        Optional<StepId> step,
        boolean newStep,
        String title,
        List<Understood> actions,
        String explanation,
        Edit edit) {
    /** Copies the list. */
    public Reading {
        actions = List.copyOf(actions);
    }
}
