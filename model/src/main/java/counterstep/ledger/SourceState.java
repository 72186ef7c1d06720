package counterstep.ledger;

/** The state of an energy source. */
public enum SourceState implements ItemState {
    LIVE,
    ISOLATED,
    PROVED_DEAD;

    @Override
    public boolean finished() {
        return this == LIVE;
    }
}
