package counterstep.ledger;

/** The state of a setting. */
public enum SettingState implements ItemState {
    /** Neither noted nor disturbed. */
    AS_FOUND,
    /** Its value is written down, and still there. */
    NOTED,
    /** What it belongs to was touched since it was noted or restored. */
    DISTURBED,
    /** Set again, and not disturbed since. */
    RESTORED;

    @Override
    public boolean finished() {
        return this == AS_FOUND || this == RESTORED;
    }
}
