package counterstep.ledger;

/** A number kept for an item; actions add to it. Which kinds of item use it stands beside it. */
enum Counter {
    /** Fasteners, parts: not in the device. A hole stays empty when its old screw is discarded. */
    MISSING,
    /** Fasteners, parts: taken out and kept; discarding takes from it. */
    ON_MAT,
    /** Fasteners: in their holes, not tight. */
    LOOSE,
    /** Parts: aside or away. */
    OFF,
    /** Clips, connectors: open. Ties: cut. */
    OPEN,
    /** Joints: not holding. */
    RELEASED,
    /** Joints: new strip, bead or paste laid, not yet pressed. */
    LAID,
    /** Settings: how often the value was noted. */
    NOTED,
    /** Settings: 1 while what it belongs to was touched and the value not restored since. */
    DISTURBED,
    /** Settings: 1 while restored and not disturbed since. */
    RESTORED,
    /** Sources: isolated by an action of their own; not by a connector, not with another source. */
    ISOLATED,
    /** Sources, derived: 1 while isolated in any way. */
    POWERLESS,
    /** Sources: seconds waited since they were isolated. */
    WAITED,
    /** Sources: 1 while proved dead. */
    PROVED,
    /** Sources, derived: 1 while what they feed may be touched. */
    SAFE
}
