package counterstep.model;

import java.util.List;

/**
 * A finding that a reviewer accepts; attached by the check and what the finding names. It may name
 * steps and items that are gone: then it no longer applies.
 *
 * @param check id of the check
 * @param steps the steps that the finding names
 * @param items the items that the finding names
 * @param reason why it is accepted
 * @param name by whom
 * @param date ISO 8601
 * @param extras unknown fields
 */
public record Waiver(
        String check,
        List<StepId> steps,
        List<ItemId> items,
        String reason,
        String name,
        String date,
        Extras extras) {
    /** Copies the lists. */
    public Waiver {
        steps = List.copyOf(steps);
        items = List.copyOf(items);
    }
}
