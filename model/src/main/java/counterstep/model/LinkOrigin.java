package counterstep.model;

/** Where a link comes from. */
public enum LinkOrigin {
    DRAWN("drawn"),
    AS_TOLD("as told"),
    IMPLIED("implied");

    private final String word;

    LinkOrigin(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
