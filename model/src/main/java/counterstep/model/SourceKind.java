package counterstep.model;

/** Where energy waits that can hurt or damage. */
public enum SourceKind {
    CELL("cell"),
    MAINS("mains"),
    CAPACITOR("capacitor"),
    SPRING("spring"),
    PRESSURE("pressure"),
    HEAT("heat");

    private final String word;

    SourceKind(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
