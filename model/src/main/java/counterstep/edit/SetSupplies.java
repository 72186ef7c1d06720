package counterstep.edit;

import counterstep.model.Action;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Supply;
import counterstep.model.SupplyId;
import counterstep.model.SupplyUse;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Sets the list of supplies. Actions that used up one which is gone lose it.
 *
 * @param supplies the whole list as it shall be
 */
public record SetSupplies(List<Supply> supplies) implements Edit {
    /** Copies the list. */
    public SetSupplies {
        supplies = List.copyOf(supplies);
    }

    @Override
    public String name() {
        return "Change supplies";
    }

    @Override
    public Procedure apply(Procedure before) {
        Set<SupplyId> listed = supplies.stream().map(Supply::id).collect(Collectors.toSet());
        return before.draft()
                .supplies(supplies)
                .steps(before.steps().stream().map(step -> using(listed, step)).toList())
                .procedure();
    }

    private static Step using(Set<SupplyId> listed, Step step) {
        List<Action> actions =
                step.actions().stream().map(action -> using(listed, action)).toList();
        return actions.equals(step.actions()) ? step : step.draft().actions(actions).step();
    }

    private static Action using(Set<SupplyId> listed, Action action) {
        List<SupplyUse> kept =
                action.supplies().stream().filter(use -> listed.contains(use.supply())).toList();
        return action.draft().supplies(kept).action();
    }
}
