package counterstep.model;

/** What kind of fastener a set is made of, washers included. */
public enum FastenerForm {
    SCREW("screw"),
    NUT("nut"),
    RING("ring"),
    STANDOFF("standoff");

    private final String word;

    FastenerForm(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
