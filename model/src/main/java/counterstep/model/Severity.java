package counterstep.model;

/** How bad a finding is. */
public enum Severity {
    ERROR("error"),
    DOUBT("doubt"),
    HINT("hint");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
