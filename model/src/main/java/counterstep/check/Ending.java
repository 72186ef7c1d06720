package counterstep.check;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/**
 * An item that does not end as it began.
 *
 * @param item which
 * @param remainder how it ends
 * @param count how many of it
 * @param steps the actions that nothing undoes, or those that put back too many
 * @param with what ends so only together with it: holders and leads of a part that stays off
 */
public record Ending(
        ItemId item, Remainder remainder, int count, List<StepId> steps, List<Ending> with) {
    /** Copies the lists. */
    public Ending {
        steps = List.copyOf(steps);
        with = List.copyOf(with);
    }

    Ending together(List<Ending> others) {
        return new Ending(item, remainder, count, steps, others);
    }

    /** The item and all that ends with it. */
    public List<ItemId> items() {
        List<ItemId> items = new ArrayList<>(List.of(item));
        with.forEach(other -> items.addAll(other.items()));
        return items;
    }

    /** The steps of the item, then of all that ends with it. */
    public List<StepId> allSteps() {
        List<StepId> all = new ArrayList<>(steps);
        with.forEach(other -> all.addAll(other.allSteps()));
        return all;
    }
}
