package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Revision;
import java.util.List;

/**
 * Sets the revision list.
 *
 * @param revisions newest last
 */
public record SetRevisions(List<Revision> revisions) implements Edit {
    /** Copies the list. */
    public SetRevisions {
        revisions = List.copyOf(revisions);
    }

    @Override
    public String name() {
        return "Change revisions";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft().revisions(revisions).procedure();
    }
}
