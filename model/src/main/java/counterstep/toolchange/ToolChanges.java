package counterstep.toolchange;

import counterstep.model.Action;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How often the hand takes up another tool. The first pick-up counts. Bare hands do not put the
 * tool down; nor does a tool that is not held, such as a wrist strap or a heater left standing.
 *
 * @param pickUps in the order of the work
 */
public record ToolChanges(List<PickUp> pickUps) {
    /** Copies the list. */
    public ToolChanges {
        pickUps = List.copyOf(pickUps);
    }

    /** The changes when the steps are done in page order, action by action. */
    public static ToolChanges inPageOrder(Procedure procedure) {
        return inPageOrder(procedure, Tooling.of(procedure));
    }

    /** The same with the tooling at hand. */
    public static ToolChanges inPageOrder(Procedure procedure, Tooling tooling) {
        Hand hand = new Hand();
        for (Step step : procedure.steps()) {
            List<Action> actions = step.actions();
            for (int place = 0; place < actions.size(); place++) {
                hand.use(step, place, tooling.toolOf(step, actions.get(place)));
            }
            if (actions.isEmpty()) {
                hand.use(step, 0, tooling.named(step));
            }
        }
        return new ToolChanges(hand.pickUps);
    }

    /** How many. */
    public int count() {
        return pickUps.size();
    }

    private static final class Hand {
        private final List<PickUp> pickUps = new ArrayList<>();
        private Optional<Tool> held = Optional.empty();

        void use(Step step, int action, Optional<Tool> tool) {
            if (tool.isPresent() && tool.get().inHand() && !tool.equals(held)) {
                pickUps.add(new PickUp(step.id(), action, tool.get()));
                held = tool;
            }
        }
    }
}
