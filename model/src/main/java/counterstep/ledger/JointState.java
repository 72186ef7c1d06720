package counterstep.ledger;

/**
 * The state of a joint. In a procedure without failures it is one of the three constants.
 *
 * @param released 1 while it does not hold
 * @param laid 1 while new strip, bead or paste lies and is not pressed
 */
public record JointState(int released, int laid) implements ItemState {
    /** As found, or pressed or rejoined again. */
    public static final JointState HOLDING = new JointState(0, 0);

    /** Released, nothing laid. */
    public static final JointState RELEASED = new JointState(1, 0);

    /** Cleaned and laid anew, to be pressed. */
    public static final JointState LAID = new JointState(1, 1);

    @Override
    public boolean finished() {
        return released <= 0;
    }
}
