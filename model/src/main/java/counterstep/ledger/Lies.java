package counterstep.ledger;

/** How much of an item lies about in a way that the bench has to keep apart. */
final class Lies {
    private Lies() {}

    static int onMat(ItemState state) {
        if (state instanceof FastenerState set) {
            return set.onMat();
        }
        return state instanceof PartState part ? part.onMat() : 0;
    }

    static int looseOrOpen(ItemState state) {
        return state instanceof PartState ? 0 : Totals.of(state).openOrLoose();
    }

    static int aside(ItemState state) {
        return state instanceof PartState part ? part.aside() : 0;
    }

    static int noted(ItemState state) {
        return state == SettingState.NOTED || state == SettingState.DISTURBED ? 1 : 0;
    }
}
