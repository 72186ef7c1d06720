package counterstep.model;

/** What a joint is made of. */
public enum JointKind {
    ADHESIVE("adhesive"),
    SEAL("seal"),
    SOLDER("solder"),
    PASTE("thermal paste");

    private final String word;

    JointKind(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
