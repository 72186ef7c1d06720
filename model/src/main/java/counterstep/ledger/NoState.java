package counterstep.ledger;

/** Of an action that names no item. */
public enum NoState implements ItemState {
    NONE;

    @Override
    public boolean finished() {
        return true;
    }
}
