package counterstep.ledger;

/** Which condition on an action does not hold. */
public enum FailureKind {
    /** The item is not in the state that the verb starts from. */
    PRECONDITION,
    /** A part that covers the item is still on its place. */
    REACH,
    /** The part is still held when it is to leave its place. */
    HOLD,
    /** What holds a part is put back while the part is not on its place. */
    SEAT,
    /** A connector or lead is still closed when the part is to go away. */
    TETHER,
    /** A connector or lead is closed while its part is away. */
    LEAD,
    /** A cover goes on over an item that is not in its final state. */
    CLOSE,
    /** The item is touched while a source that feeds it is live or not yet proved dead. */
    ENERGY,
    /** A setting is disturbed before it was noted. */
    NOTE
}
