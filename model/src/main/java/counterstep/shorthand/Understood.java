package counterstep.shorthand;

import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Tool;
import java.util.List;
import java.util.Optional;

/**
 * An action as it was understood.
 *
 * @param action what the step will do
 * @param item on what; empty for an action on no item
 * @param newItem whether the item is made with it
 * @param facts what is told of the item, as typed
 * @param tool the tool that the line names for it
 */
public record Understood(
        Action action,
        Optional<Item> item,
        boolean newItem,
        List<String> facts,
        Optional<Tool> tool) {
    /** Copies the list. */
    public Understood {
        facts = List.copyOf(facts);
    }
}
