package counterstep.model;

/** The part of the work that a step belongs to, in the order in which the work is done. */
public enum Phase {
    /** Before anything is opened: cautions, tools, power off. */
    PREPARE("prepare"),
    /** Taking apart. */
    TEARDOWN("teardown"),
    /** What the work is for: exchange, clean, adjust. */
    SERVICE("service"),
    /** Putting back. */
    REASSEMBLY("reassembly"),
    /** Trying the device after it is closed. */
    VERIFY("verify");

    private final String word;

    Phase(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
