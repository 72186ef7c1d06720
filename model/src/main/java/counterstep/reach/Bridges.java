package counterstep.reach;

import counterstep.implied.ImpliedLink;
import counterstep.implied.ImpliedLinks;
import counterstep.links.Precedence;
import counterstep.links.Reduction;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The links of a document from which steps were taken out: what came before what still does, over
 * the gaps too. So each order that they allow is the rest of an order that the whole allowed. Links
 * that the facts ask for and no writer drew are added, and those that follow from others left out.
 */
final class Bridges {
    private final Map<StepId, List<Link>> from = new HashMap<>();
    private final Set<StepId> kept;

    private Bridges(Procedure whole, Set<StepId> kept) {
        this.kept = kept;
        for (Link link : whole.links()) {
            from.computeIfAbsent(link.before(), none -> new ArrayList<>()).add(link);
        }
    }

    /** Links a part of a whole that has the steps and items already. */
    static Procedure over(Procedure whole, Procedure part, Set<StepId> kept) {
        Bridges bridges = new Bridges(whole, kept);
        Map<LinkEnds, Link> links = new LinkedHashMap<>();
        whole.links().stream()
                .filter(link -> kept.contains(link.before()))
                .filter(link -> kept.contains(link.after()))
                .forEach(link -> links.put(link.ends(), link));
        part.steps().forEach(step -> bridges.add(step.id(), links));
        ImpliedLinks.of(linked(part, links)).proposals().stream()
                .map(ImpliedLink::accepted)
                .forEach(link -> links.put(link.ends(), link));
        links.keySet().removeAll(Reduction.of(Precedence.of(linked(part, links))).following());
        return linked(part, links);
    }

    private static Procedure linked(Procedure part, Map<LinkEnds, Link> links) {
        return part.draft().links(List.copyOf(links.values())).procedure();
    }

    /** From a kept step along steps that are gone to the next kept ones. */
    private void add(StepId start, Map<LinkEnds, Link> links) {
        Deque<StepId> gone = new ArrayDeque<>(List.of(start));
        Set<StepId> seen = new HashSet<>(gone);
        while (!gone.isEmpty()) {
            for (Link link : from.getOrDefault(gone.remove(), List.of())) {
                StepId next = link.after();
                if (!kept.contains(next)) {
                    if (seen.add(next)) {
                        gone.add(next);
                    }
                } else if (!next.equals(start)) {
                    links.computeIfAbsent(new LinkEnds(start, next), ends -> over(ends, link));
                }
            }
        }
    }

    private static Link over(LinkEnds ends, Link last) {
        boolean told = last.origin() == LinkOrigin.AS_TOLD;
        LinkOrigin origin = told ? LinkOrigin.AS_TOLD : LinkOrigin.DRAWN;
        return new Link(ends.before(), ends.after(), origin, Extras.NONE);
    }
}
