package counterstep.estimate;

import java.util.List;

/**
 * How long the hands may take for a step; waits and tool changes come on top. Never a measured
 * time.
 *
 * @param rows one an action, in their order
 */
public record Estimate(List<Row> rows) {
    /** Copies the list. */
    public Estimate {
        rows = List.copyOf(rows);
    }

    /** The sum of the rows. */
    public double exactSeconds() {
        return rows.stream().mapToDouble(Row::seconds).sum();
    }

    /** That in whole seconds, rounded half up. */
    public int seconds() {
        return (int) Math.min(Integer.MAX_VALUE, Math.round(exactSeconds()));
    }
}
