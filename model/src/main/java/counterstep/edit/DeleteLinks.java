package counterstep.edit;

import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import java.util.Set;

/**
 * Deletes links.
 *
 * @param links which, by the steps they join
 */
public record DeleteLinks(Set<LinkEnds> links) implements Edit {
    /** Copies the set. */
    public DeleteLinks {
        links = Set.copyOf(links);
    }

    @Override
    public String name() {
        return links.size() == 1 ? "Delete link" : "Delete " + links.size() + " links";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft()
                .links(
                        before.links().stream()
                                .filter(link -> !links.contains(link.ends()))
                                .toList())
                .procedure();
    }
}
