package counterstep.mending;

import counterstep.edit.Edit;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws links. Old links that then follow from others are left out, so that the drawing stays
 * light.
 *
 * @param links what to draw
 */
public record DrawLinks(List<LinkEnds> links) implements Edit {
    /** Copies the list. */
    public DrawLinks {
        links = List.copyOf(links);
    }

    @Override
    public String name() {
        return links.size() == 1 ? "Draw link" : "Draw " + links.size() + " links";
    }

    @Override
    public Procedure apply(Procedure before) {
        List<Link> all = new ArrayList<>(before.links());
        for (LinkEnds ends : links) {
            if (all.stream().noneMatch(old -> old.ends().equals(ends))) {
                all.add(new Link(ends.before(), ends.after(), LinkOrigin.DRAWN, Extras.NONE));
            }
        }
        return before.draft().links(Light.links(before, all)).procedure();
    }
}
