package counterstep.model;

/** A holder that is cut once and never used again. */
public enum TieKind {
    CABLE_TIE("cable tie"),
    TAPE("tape"),
    RIVET("rivet"),
    SEAL_LABEL("seal label");

    private final String word;

    TieKind(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
