package counterstep.links;

import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.OrderRule;
import counterstep.model.Phase;
import counterstep.model.StepId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * No step of a phase before all of the phases before it.
 *
 * @param phases of all steps
 */
public record PhaseOrder(Map<StepId, Phase> phases) implements Demand {
    /** Copies the map. */
    public PhaseOrder {
        phases = Map.copyOf(phases);
    }

    @Override
    public String kind() {
        return OrderRule.PHASES_IN_ORDER.word();
    }

    @Override
    public List<StepId> steps() {
        return List.of();
    }

    @Override
    public Optional<ItemId> item() {
        return Optional.empty();
    }

    @Override
    public boolean keptIn(List<StepId> order) {
        for (int at = 1; at < order.size(); at++) {
            if (before(order.get(at), order.get(at - 1))) {
                return false;
            }
        }
        return true;
    }

    /** Whether the phase of one step comes before that of another. */
    boolean before(StepId earlier, StepId later) {
        return phases.get(earlier).compareTo(phases.get(later)) < 0;
    }

    @Override
    public String told(Index index) {
        return "phases in order";
    }
}
