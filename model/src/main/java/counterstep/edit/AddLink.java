package counterstep.edit;

import counterstep.model.Link;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws a link; one that is already there stays single. A loop is let in: a check finds it.
 *
 * @param link the new link
 */
public record AddLink(Link link) implements Edit {
    @Override
    public String name() {
        return "Link steps";
    }

    @Override
    public Procedure apply(Procedure before) {
        if (before.links().stream().anyMatch(old -> old.ends().equals(link.ends()))) {
            return before;
        }
        List<Link> links = new ArrayList<>(before.links());
        links.add(link);
        return before.draft().links(links).procedure();
    }
}
