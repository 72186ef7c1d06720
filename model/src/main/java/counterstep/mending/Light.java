package counterstep.mending;

import counterstep.links.Precedence;
import counterstep.links.Reduction;
import counterstep.model.Link;
import counterstep.model.Procedure;
import java.util.List;

/** Leaves out links that follow from others, unless the writer had drawn them so. */
final class Light {
    private Light() {}

    /** Those of the links to be that do not only now follow from others. */
    static List<Link> links(Procedure before, List<Link> all) {
        Reduction old = Reduction.of(Precedence.of(before));
        Reduction now = Reduction.of(Precedence.of(before.draft().links(all).procedure()));
        return all.stream()
                .filter(
                        link ->
                                !now.following().contains(link.ends())
                                        || old.following().contains(link.ends()))
                .toList();
    }
}
