package counterstep.handbook;

import counterstep.model.ScrewThread;
import counterstep.model.ThreadKind;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Coarse pitches of ISO metric threads M1 to M10 ({@code coarse-pitch.csv}). */
final class ThreadTable {
    private static final Map<Double, Double> PITCHES =
            Table.read("coarse-pitch.csv").numbers("pitch");

    private ThreadTable() {}

    /** The coarse pitch of a nominal diameter, both in mm; empty where the table has none. */
    static OptionalDouble coarsePitch(double diameter) {
        return Optional.ofNullable(PITCHES.get(diameter)).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    /** Whether it is a metric thread of the table with its coarse pitch, stated or not. */
    static boolean coarse(ScrewThread thread) {
        OptionalDouble coarse = coarsePitch(thread.diameter());
        return thread.kind() == ThreadKind.METRIC
                && coarse.isPresent()
                && (thread.pitch().isEmpty() || thread.pitch().equals(coarse));
    }
}
