package counterstep.model;

import java.util.List;

/**
 * A remark of a reviewer.
 *
 * @param id its id
 * @param steps the steps it is on; may be empty
 * @param items the items it is on; may be empty
 * @param author who
 * @param date ISO 8601
 * @param text what
 * @param extras unknown fields
 */
public record Comment(
        CommentId id,
        List<StepId> steps,
        List<ItemId> items,
        String author,
        String date,
        String text,
        Extras extras) {
    /** Copies the lists. */
    public Comment {
        steps = List.copyOf(steps);
        items = List.copyOf(items);
    }
}
