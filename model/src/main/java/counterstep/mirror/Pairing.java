package counterstep.mirror;

import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which putting back belongs to which removal, in page order: to the latest that is still open. An
 * action that undoes nothing makes no pair; checks tell of it.
 */
public final class Pairing {
    private Pairing() {}

    /**
     * The pairs of a document in the order of their removals; those of one removal in the order in
     * which they come back, what never does last.
     */
    public static List<Pair> of(Procedure procedure) {
        Map<ItemId, OpenRemovals> items = new HashMap<>();
        List<Removal> removals = new ArrayList<>();
        for (Step step : procedure.steps()) {
            for (Action action : step.actions()) {
                action.item()
                        .ifPresent(
                                item ->
                                        items.computeIfAbsent(
                                                        item, id -> new OpenRemovals(id, removals))
                                                .take(step.id(), action));
            }
        }
        return removals.stream().flatMap(removal -> removal.pairs().stream()).toList();
    }
}
