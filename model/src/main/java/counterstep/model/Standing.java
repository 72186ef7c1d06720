package counterstep.model;

/**
 * How far a step has been tried; an edit takes it back to written.
 *
 * @param trial how far
 * @param by who; may be empty
 * @param unit on which unit; may be empty
 * @param date when, ISO 8601; may be empty
 */
public record Standing(Trial trial, String by, String unit, String date) {
    /** Not tried yet. */
    public static final Standing WRITTEN = new Standing(Trial.WRITTEN, "", "", "");
}
