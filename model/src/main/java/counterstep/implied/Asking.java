package counterstep.implied;

import counterstep.ledger.Needs.Need;
import counterstep.model.ItemId;

/**
 * An action and one thing that it needs of another item.
 *
 * @param act the action
 * @param need the condition
 */
record Asking(Act act, Need need) {
    /** The item that the action itself is about. */
    ItemId item() {
        return act.action().item().orElseThrow();
    }
}
