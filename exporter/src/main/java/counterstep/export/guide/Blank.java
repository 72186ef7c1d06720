package counterstep.export.guide;

/**
 * A place to write a reading by hand.
 *
 * @param label what is read, with its limit; may be empty
 * @param unit what stands behind the line; may be empty
 */
public record Blank(String label, String unit) {
    /** Whether the writer has drawn lines in the label already: 'height ____ mm'. */
    public boolean drawn() {
        return label.contains("__");
    }
}
