package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;

/**
 * Exchanges a step for a changed one of the same id. A step whose content changes has not been
 * tried in its new form: its standing goes back to written, unless the standing itself is what
 * changes.
 *
 * @param changed the step as it shall be
 * @param name what a person would call this change: 'Change tool'
 */
public record ChangeStep(Step changed, String name) implements Edit {
    @Override
    public Procedure apply(Procedure before) {
        Step old = before.step(changed.id());
        if (changed.equals(old)) {
            return before;
        }
        boolean tried = changed.standing().equals(old.standing()) && !onlyPlaceDiffers(old);
        return before.withStep(tried ? changed.draft().standing(Standing.WRITTEN).step() : changed);
    }

    private boolean onlyPlaceDiffers(Step old) {
        return old.draft().place(changed.place()).step().equals(changed);
    }
}
