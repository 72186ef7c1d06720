package counterstep.model;

/** What keeps a connector closed. */
public enum Latch {
    NONE("none"),
    FRICTION("friction"),
    FRONT_FLIP("front flip"),
    BACK_FLIP("back flip"),
    SLIDE("slide lock"),
    LOCKING("locking latch"),
    SCREWED("screwed");

    private final String word;

    Latch(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
