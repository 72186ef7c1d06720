package counterstep.study;

import counterstep.model.Link;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Faults of links. */
final class LinkFaults {
    private LinkFaults() {}

    static Stream<Mutant> gone(Procedure whole) {
        return whole.links().stream().map(link -> mutant(whole, link, "gone", List.of()));
    }

    static Stream<Mutant> reversed(Procedure whole) {
        return whole.links().stream()
                .map(
                        link ->
                                mutant(
                                        whole,
                                        link,
                                        "reversed",
                                        List.of(Link.drawn(link.after(), link.before()))));
    }

    private static Mutant mutant(Procedure whole, Link link, String change, List<Link> instead) {
        List<Link> links = new ArrayList<>(whole.links());
        links.remove(link);
        links.addAll(instead);
        String what = "link %s -> %s %s".formatted(link.before(), link.after(), change);
        return new Mutant(what, whole.draft().links(links).procedure());
    }
}
