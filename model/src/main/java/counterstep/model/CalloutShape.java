package counterstep.model;

/** How a callout marks its place on a photo. */
public enum CalloutShape {
    POINT("point"),
    BOX("box"),
    ARROW("arrow");

    private final String word;

    CalloutShape(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
