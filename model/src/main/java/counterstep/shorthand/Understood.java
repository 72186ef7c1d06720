package counterstep.shorthand;

import counterstep.model.Action;
import counterstep.model.Item;
import java.util.Optional;

/**
 * An action as it was understood.
 *
 * @param action what the step will do
 * @param item on what; empty for an action on no item
 * @param newItem whether the item is made with it
 */
public record Understood(Action action, Optional<Item> item, boolean newItem) {}
