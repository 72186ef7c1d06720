package counterstep.edit;

import counterstep.model.Procedure;
import java.util.List;

/**
 * Several edits as one, undone as one.
 *
 * @param name what a person would call them together
 * @param edits in the order in which they apply
 */
public record Edits(String name, List<Edit> edits) implements Edit {
    /** Copies the list. */
    public Edits {
        edits = List.copyOf(edits);
    }

    @Override
    public Procedure apply(Procedure before) {
        Procedure after = before;
        for (Edit edit : edits) {
            after = edit.apply(after);
        }
        return after;
    }
}
