package counterstep.check;

import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.List;
import java.util.Optional;

/**
 * One fault at its place.
 *
 * @param check id of the check that found it
 * @param severity how bad it is in this document
 * @param message one sentence for a technician, with page numbers
 * @param steps the place first, then the other steps concerned
 * @param items the item at fault first
 * @param waived the waiver that accepts it
 */
public record Finding(
        String check,
        Severity severity,
        String message,
        List<StepId> steps,
        List<ItemId> items,
        Optional<Waiver> waived) {
    /** Copies the lists. */
    public Finding {
        steps = List.copyOf(steps);
        items = List.copyOf(items);
    }

    /** The same finding at another severity. */
    public Finding withSeverity(Severity other) {
        return new Finding(check, other, message, steps, items, waived);
    }

    /** The same finding, accepted or not. */
    public Finding withWaiver(Optional<Waiver> waiver) {
        return new Finding(check, severity, message, steps, items, waiver);
    }

    /** Whether it counts: it is not accepted by a waiver. */
    public boolean open() {
        return waived.isEmpty();
    }
}
