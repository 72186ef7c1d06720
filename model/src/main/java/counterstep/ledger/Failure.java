package counterstep.ledger;

import counterstep.model.ItemId;

/**
 * A condition that does not hold when an action starts. The replay then goes on by plain
 * arithmetic: a counter may go below 0 or above the size of the set.
 *
 * @param kind which condition
 * @param about the item whose state is wrong: the cover, the holder, the source; for {@link
 *     FailureKind#PRECONDITION} mostly the action's own
 * @param needed how many it asks for
 * @param found how many there are
 * @param fromTheEnd it would have held, had that item ended as it began; so what is wrong is that
 *     it is never finished, or finished too often
 * @param impossible the verb has no meaning for this item, whatever its state
 * @param state of that item when it fails
 * @param detail a few words on what is wrong
 */
public record Failure(
        FailureKind kind,
        ItemId about,
        int needed,
        int found,
        boolean fromTheEnd,
        boolean impossible,
        ItemState state,
        String detail) {}
