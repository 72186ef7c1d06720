package counterstep.handbook;

import counterstep.model.ScrewThread;
import counterstep.model.Torque;
import java.util.Map;
import java.util.Optional;

/**
 * Published standard tightening torques ({@code standard-torque.csv}): generic figures, so that the
 * writer's own specification wins.
 */
public final class StandardTorque {
    /** The chart's column is for 105 N/mm² and allows up to 150. */
    private static final double UPPER_END = 150.0 / 105;

    private static final Table TABLE = Table.read("standard-torque.csv");
    private static final Map<Double, Double> SOFT = TABLE.numbers("0.5T");

    private StandardTorque() {}

    /**
     * For joints in brass, aluminium, plastic or die-cast: the chart's column 0.5T; empty where the
     * chart does not have the thread.
     */
    public static Optional<Torque> soft(ScrewThread thread) {
        return ThreadTable.coarse(thread)
                ? Optional.ofNullable(SOFT.get(thread.diameter())).map(Torque::new)
                : Optional.empty();
    }

    /** The most that such joints take by the chart: the upper end of the range of that column. */
    public static Optional<Torque> softLimit(ScrewThread thread) {
        return soft(thread).map(torque -> new Torque(torque.newtonMetres() * UPPER_END));
    }
}
