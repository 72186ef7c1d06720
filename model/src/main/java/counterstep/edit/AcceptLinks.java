package counterstep.edit;

import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Takes proposed links into the document, as implied by the items; one that is there already stays
 * as it is.
 *
 * @param links which, by the steps they join
 */
public record AcceptLinks(List<LinkEnds> links) implements Edit {
    /** Copies the list. */
    public AcceptLinks {
        links = List.copyOf(links);
    }

    @Override
    public String name() {
        return links.size() == 1
                ? "Accept proposed link"
                : "Accept " + links.size() + " proposed links";
    }

    @Override
    public Procedure apply(Procedure before) {
        Set<LinkEnds> there = new LinkedHashSet<>();
        before.links().forEach(link -> there.add(link.ends()));
        List<Link> after = new ArrayList<>(before.links());
        for (LinkEnds ends : links) {
            if (there.add(ends)) {
                after.add(new Link(ends.before(), ends.after(), LinkOrigin.IMPLIED, Extras.NONE));
            }
        }
        return before.draft().links(after).procedure();
    }
}
