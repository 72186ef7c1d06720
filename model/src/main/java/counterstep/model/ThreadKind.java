package counterstep.model;

/** How a thread holds. */
public enum ThreadKind {
    /** ISO metric, into a threaded hole or nut. */
    METRIC("metric", "M"),
    /** Forms its own thread in plastic. */
    PLASTIC_FORMING("plastic-forming", "K"),
    /** Cuts or taps its own thread in sheet or wood. */
    TAPPING("tapping", "ST");

    private final String word;
    private final String prefix;

    ThreadKind(String word, String prefix) {
        this.word = word;
        this.prefix = prefix;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }

    /** The letter before the diameter. */
    public String prefix() {
        return prefix;
    }
}
