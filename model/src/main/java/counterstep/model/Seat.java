package counterstep.model;

/** What a fastener goes into; torque is doubtful in plastic and die-cast. */
public enum Seat {
    METAL("metal"),
    PLASTIC("plastic"),
    DIE_CAST("die-cast"),
    INSERT("threaded insert"),
    WOOD("wood"),
    UNKNOWN("not stated");

    private final String word;

    Seat(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
