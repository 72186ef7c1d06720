package counterstep.model;

/** Where the time of a step comes from. */
public enum TimeSource {
    MEASURED("measured"),
    ESTIMATED("estimated");

    private final String word;

    TimeSource(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
