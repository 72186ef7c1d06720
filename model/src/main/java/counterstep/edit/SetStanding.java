package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.StepId;
import java.util.Set;

/**
 * Says how far steps have been tried.
 *
 * @param steps which
 * @param standing how far, by whom, on which unit, when
 */
public record SetStanding(Set<StepId> steps, Standing standing) implements Edit {
    /** Copies the set. */
    public SetStanding {
        steps = Set.copyOf(steps);
    }

    @Override
    public String name() {
        return "Set standing";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft()
                .steps(
                        before.steps().stream()
                                .map(
                                        step ->
                                                steps.contains(step.id())
                                                        ? step.draft().standing(standing).step()
                                                        : step)
                                .toList())
                .procedure();
    }
}
