package counterstep.export.bench;

/**
 * A few words beside a step, and a line to write on behind them.
 *
 * @param words what is counted, set or read; may be empty
 * @param blank whether a line to write on follows
 * @param unit what stands behind the line; may be empty
 */
record Note(String words, boolean blank, String unit) {
    static Note of(String words) {
        return new Note(words, false, "");
    }

    static Note toFill(String words, String unit) {
        return new Note(words, true, unit);
    }

    /** A reading to write down; the writer's own lines are kept: 'height ____ mm'. */
    static Note reading(String label, String unit) {
        return label.contains("__") ? of(label) : toFill(label, unit);
    }
}
