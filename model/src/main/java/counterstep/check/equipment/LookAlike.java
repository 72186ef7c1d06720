package counterstep.check.equipment;

import counterstep.model.Drive;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.ScrewThread;
import counterstep.model.ThreadKind;
import java.util.Locale;
import java.util.Optional;

/**
 * What an eye tells fasteners apart by, but for their length.
 *
 * @param form screw, nut, ring, standoff
 * @param drive drive and size
 * @param thread how it holds
 * @param diameter of the thread in mm
 */
record LookAlike(FastenerForm form, Drive drive, ThreadKind thread, double diameter) {
    /** Two lengths that are no further apart than this are told apart only by measuring. */
    private static final double CLOSE = 2;

    /** Lengths are given in tenths; this is less than what arithmetic adds to a difference. */
    private static final double ROUNDING = 1e-6;

    /**
     * The looks of a set; empty where drive or thread is not stated, or it never leaves its part.
     */
    static Optional<LookAlike> of(FastenerSet set) {
        if (set.captive() || set.drive().isEmpty() || set.thread().isEmpty()) {
            return Optional.empty();
        }
        ScrewThread thread = set.thread().get();
        return Optional.of(
                new LookAlike(set.form(), set.drive().get(), thread.kind(), thread.diameter()));
    }

    /** Whether two sets of the same looks can be mistaken for each other and must not be. */
    static boolean confusing(FastenerSet one, FastenerSet other) {
        return lengthsDoubtful(one, other) && !apart(one, other);
    }

    static boolean lengthsDoubtful(FastenerSet one, FastenerSet other) {
        if (one.length().isEmpty() || other.length().isEmpty()) {
            return true;
        }
        double difference = Math.abs(one.length().getAsDouble() - other.length().getAsDouble());
        return difference > ROUNDING && difference <= CLOSE + ROUNDING;
    }

    /** Whether each has a tray of its own name. */
    private static boolean apart(FastenerSet one, FastenerSet other) {
        return !tray(one).isEmpty() && !tray(other).isEmpty() && !tray(one).equals(tray(other));
    }

    /** The name of its tray, however it is written; may be empty. */
    static String tray(FastenerSet set) {
        return set.tray().strip().toUpperCase(Locale.ROOT);
    }
}
