package counterstep.model;

/** What kind of tool it is. */
public enum ToolKind {
    DRIVER("driver"),
    KEY("key"),
    SOCKET("socket"),
    WRENCH("wrench"),
    PICK("pick"),
    SPUDGER("spudger"),
    TWEEZERS("tweezers"),
    PLIERS("pliers"),
    CUTTER("cutter"),
    SPATULA("spatula"),
    KNIFE("knife"),
    CALIPER("caliper"),
    METER("meter"),
    HEATER("heater"),
    IRON("soldering iron"),
    ANTISTATIC("antistatic set"),
    OTHER("other");

    private final String word;

    ToolKind(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
