package counterstep.check;

import counterstep.ledger.Witness;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One fault at its place.
 *
 * @param check id of the check that found it
 * @param severity how bad it is in this document
 * @param message one sentence for a technician, with page numbers
 * @param steps the place first, then the other steps concerned
 * @param items the item at fault first
 * @param witness an order that goes wrong, where page order does not
 * @param waived the waiver that accepts it
 */
public record Finding(
        String check,
        Severity severity,
        String message,
        List<StepId> steps,
        List<ItemId> items,
        Optional<Witness> witness,
        Optional<Waiver> waived) {
    private static final String IN_SOME_ORDER = "In some order: ";

    /** Copies the lists. */
    public Finding {
        steps = List.copyOf(steps);
        items = List.copyOf(items);
    }

    /** The same finding at another severity. */
    public Finding withSeverity(Severity other) {
        return new Finding(check, other, message, steps, items, witness, waived);
    }

    /** The same finding, accepted or not. */
    public Finding withWaiver(Optional<Waiver> waiver) {
        return new Finding(check, severity, message, steps, items, witness, waiver);
    }

    /** The same finding, as it shows in an order other than that of the page. */
    public Finding inOrder(Witness order) {
        String told = IN_SOME_ORDER + message;
        return new Finding(check, severity, told, steps, items, Optional.of(order), waived);
    }

    /** The sentence alone, where it is clear from what stands beside it in which order it shows. */
    public String sentence() {
        return message.startsWith(IN_SOME_ORDER)
                ? message.substring(IN_SOME_ORDER.length())
                : message;
    }

    /** Whether it is the same fault: same check, same steps and items, in any order. */
    public boolean sameFault(Finding other) {
        return check.equals(other.check)
                && Set.copyOf(steps).equals(Set.copyOf(other.steps))
                && Set.copyOf(items).equals(Set.copyOf(other.items));
    }

    /** Whether a waiver is attached to it: same check, steps and items, in any order. */
    public boolean acceptedBy(Waiver waiver) {
        return check.equals(waiver.check())
                && Set.copyOf(steps).equals(Set.copyOf(waiver.steps()))
                && Set.copyOf(items).equals(Set.copyOf(waiver.items()));
    }

    /** Whether it counts: it is not accepted by a waiver. */
    public boolean open() {
        return waived.isEmpty();
    }
}
