package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;

/**
 * Gives a step another title. Its id stays, so links, findings and comments stay attached.
 *
 * @param step which
 * @param title the new title; outer blanks are dropped
 */
public record RenameStep(StepId step, String title) implements Edit {
    @Override
    public String name() {
        return "Rename step";
    }

    @Override
    public Procedure apply(Procedure before) {
        Step old = before.step(step);
        String stripped = title.strip();
        return stripped.equals(old.title())
                ? before
                : before.withStep(old.draft().title(stripped).standing(Standing.WRITTEN).step());
    }
}
