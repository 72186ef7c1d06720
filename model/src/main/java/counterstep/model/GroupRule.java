package counterstep.model;

/** What keeps the steps of a group in company. */
public enum GroupRule {
    TOGETHER("together"),
    RIGHT_AFTER("right after");

    private final String word;

    GroupRule(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
