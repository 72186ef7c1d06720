package counterstep.model;

/** How far a step has been tried. */
public enum Trial {
    WRITTEN("written"),
    WALKED_THROUGH("walked through at the table"),
    DONE("done on the device");

    private final String word;

    Trial(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
