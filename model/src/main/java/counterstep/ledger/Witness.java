package counterstep.ledger;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/**
 * An order that the links allow and in which something goes wrong.
 *
 * @param first what is done first, in this order; as few steps as it takes
 * @param then the step that then fails; empty where all steps are done and the end is wrong
 * @param about the item whose state is wrong
 * @param readings the state of that item after each step of {@code first} that acts on it
 * @param bound true where there are too many orders to try each: then it may be a false alarm
 */
public record Witness(
        List<StepId> first,
        Optional<StepId> then,
        ItemId about,
        List<Reading> readings,
        boolean bound) {
    /** Copies the lists. */
    public Witness {
        first = List.copyOf(first);
        readings = List.copyOf(readings);
    }

    /**
     * What the item is like when a step is done.
     *
     * @param after the step
     * @param state of the item then
     */
    public record Reading(StepId after, ItemState state) {}
}
