package counterstep.model;

import java.util.OptionalDouble;

/**
 * A thread.
 *
 * @param kind how it holds
 * @param diameter nominal, in mm, above 0
 * @param pitch in mm; empty means the coarse one
 */
public record ScrewThread(ThreadKind kind, double diameter, OptionalDouble pitch) {
    /** Refuses sizes that are not above 0. */
    public ScrewThread {
        Require.positive(diameter, "a thread diameter");
        if (pitch.isPresent()) {
            Require.positive(pitch.getAsDouble(), "a pitch");
        }
    }

    /** As on a drawing: M1.6, M8 × 1. */
    public String label() {
        String size = kind.prefix() + Numbers.plain(diameter);
        return pitch.isPresent() ? size + " × " + Numbers.plain(pitch.getAsDouble()) : size;
    }
}
