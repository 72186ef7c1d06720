package counterstep.model;

/** How a joint is released. */
public enum ReleaseMethod {
    HEAT("heat"),
    PULL("pull"),
    SOLVENT("solvent"),
    DESOLDERING("desoldering"),
    BLADE("blade");

    private final String word;

    ReleaseMethod(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
