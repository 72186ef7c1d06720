package counterstep.editor.canvas;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The last routes, kept while neither a step has moved nor a link has changed. */
final class KeptRoutes {
    private record Place(StepId step, double x, double y) {}

    private record Asked(
            List<Place> places,
            List<LinkEnds> links,
            Set<LinkEnds> critical,
            Set<LinkEnds> proposed) {}

    private Asked asked = new Asked(List.of(), List.of(), Set.of(), Set.of());
    private Map<LinkEnds, Route> routes = Map.of();

    /** As {@link LinkRouting} routes them. */
    Map<LinkEnds, Route> of(
            Map<StepId, Card> cards,
            List<LinkEnds> links,
            Set<LinkEnds> critical,
            Set<LinkEnds> proposed) {
        List<Place> places =
                cards.values().stream()
                        .map(card -> new Place(card.step(), card.x(), card.y()))
                        .toList();
        Asked now = new Asked(places, List.copyOf(links), critical, Set.copyOf(proposed));
        if (!now.equals(asked)) {
            routes = LinkRouting.of(cards, links, critical, proposed);
            asked = now;
        }
        return routes;
    }
}
