package counterstep.model;

/** What a document asks of every order of its steps, beside its links and groups. */
public enum OrderRule {
    /** No step of a phase is done before all of the phases before it are. */
    PHASES_IN_ORDER("phases in order"),
    /**
     * Fasteners that are tightened in a pattern are tightened in one go: nothing else is done
     * between the steps that do it. So, too, when they are loosened.
     */
    PATTERNS_WHOLE("patterns whole");

    private final String word;

    OrderRule(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }
}
