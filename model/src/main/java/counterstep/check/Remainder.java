package counterstep.check;

/** How an item can end other than it began. */
public enum Remainder {
    /** Fasteners and parts: missing from the device. */
    NEVER_BACK,
    /** Parts: beside their place. */
    ASIDE,
    /** Fasteners: not tight. */
    LOOSE,
    /** Clips, connectors: open. Ties: cut. Joints: not holding. */
    OPEN,
    /** More put back than was taken off. */
    TOO_MANY,
    /** Settings: disturbed, or noted only. */
    NOT_RESTORED,
    /** Sources: isolated by an action of their own. */
    NO_POWER
}
