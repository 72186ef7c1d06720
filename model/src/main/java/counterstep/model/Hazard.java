package counterstep.model;

import java.util.List;

/**
 * A notice printed before the step, or before the whole work, that it belongs to.
 *
 * @param signal how severe
 * @param hazard what can hurt or be damaged
 * @param consequence what then happens
 * @param avoidance how to avoid it
 * @param items the items it speaks of; may be empty
 * @param extras unknown fields
 */
public record Hazard(
        SignalWord signal,
        String hazard,
        String consequence,
        String avoidance,
        List<ItemId> items,
        Extras extras) {
    /** Copies the list. */
    public Hazard {
        items = List.copyOf(items);
    }
}
