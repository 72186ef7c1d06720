package counterstep.edit;

import counterstep.model.Extras;
import counterstep.model.GroupRule;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Makes steps a group, in page order. A step is in one group: they leave those they were in, and a
 * group left with one step goes.
 *
 * @param rule what keeps them in company
 * @param steps two or more
 */
public record KeepInCompany(GroupRule rule, Set<StepId> steps) implements Edit {
    /** Copies the set. */
    public KeepInCompany {
        steps = Set.copyOf(steps);
    }

    @Override
    public String name() {
        return switch (rule) {
            case TOGETHER -> "Keep steps together";
            case RIGHT_AFTER -> "Keep steps right after each other";
        };
    }

    @Override
    public Procedure apply(Procedure before) {
        List<StepGroup> groups = new ArrayList<>(DissolveGroups.without(steps, before.groups()));
        List<StepId> paged = before.steps().stream().map(Step::id).filter(steps::contains).toList();
        groups.add(new StepGroup(rule, paged, Extras.NONE));
        return before.draft().groups(groups).procedure();
    }
}
