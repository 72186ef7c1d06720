package counterstep.implied;

/** Where one of the pieces is that an item counts. */
enum Place {
    /** As found: in, tight, closed, on, holding, live. */
    HOME,
    /** A fastener in its hole, not tight. */
    LOOSE,
    /** A part off its place and not away. */
    ASIDE,
    /** Out, open, cut, away, released, isolated. */
    OFF,
    /** A joint made ready: new strip, bead or paste, not yet pressed. */
    LAID
}
