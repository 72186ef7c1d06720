package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import java.util.List;
import java.util.Set;

/**
 * Drops every group that one of these steps is in; the steps stay.
 *
 * @param steps which
 */
public record DissolveGroups(Set<StepId> steps) implements Edit {
    /** Copies the set. */
    public DissolveGroups {
        steps = Set.copyOf(steps);
    }

    @Override
    public String name() {
        return "Dissolve group";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft()
                .groups(
                        before.groups().stream()
                                .filter(group -> group.steps().stream().noneMatch(steps::contains))
                                .toList())
                .procedure();
    }

    /** Groups with some steps taken out of them; a group left with one step goes. */
    static List<StepGroup> without(Set<StepId> gone, List<StepGroup> groups) {
        return groups.stream()
                .map(group -> new Left(group, left(gone, group)))
                .filter(left -> left.steps.size() > 1)
                .map(left -> new StepGroup(left.group.rule(), left.steps, left.group.extras()))
                .toList();
    }

    private static List<StepId> left(Set<StepId> gone, StepGroup group) {
        return group.steps().stream().filter(step -> !gone.contains(step)).toList();
    }

    private record Left(StepGroup group, List<StepId> steps) {}
}
