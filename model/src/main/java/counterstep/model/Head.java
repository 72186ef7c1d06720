package counterstep.model;

/** The head of a screw; length counts from under it, overall when countersunk (ISO 225). */
public enum Head {
    PAN("pan"),
    COUNTERSUNK("countersunk"),
    RAISED_COUNTERSUNK("raised countersunk"),
    CYLINDER("cylinder"),
    BUTTON("button"),
    HEXAGON("hexagon"),
    FLANGE("flange"),
    NONE("none");

    private final String word;

    Head(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
