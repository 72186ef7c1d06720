package counterstep.ledger;

import counterstep.model.ItemId;

/**
 * What an action does to one counter.
 *
 * @param item whose counter
 * @param counter which
 * @param change how
 * @param amount by how many, or to which value
 */
record Effect(ItemId item, Counter counter, Change change, int amount) {
    /** How a counter changes. */
    enum Change {
        /** The amount is added; linear, so sums do not depend on order. */
        ADD,
        /** The counter becomes the amount. */
        SET,
        /** Removing takes loose ones first: as many as there are, at most the amount. */
        TAKE_WHAT_IS_THERE
    }

    /** The value after this effect. */
    int on(int value) {
        return switch (change) {
            case ADD -> value + amount;
            case SET -> amount;
            case TAKE_WHAT_IS_THERE -> value - Math.max(0, Math.min(value, amount));
        };
    }
}
