package counterstep.model;

/** Whether somebody must stay while a wait runs. */
public enum Attendance {
    /** Other work beside it is possible, leaving is not: heat. */
    WATCHED("watched"),
    /** Nobody is needed: curing, discharge. */
    UNATTENDED("unattended");

    private final String word;

    Attendance(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
