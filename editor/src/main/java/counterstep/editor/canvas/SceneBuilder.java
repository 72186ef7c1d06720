package counterstep.editor.canvas;

import counterstep.editor.desk.DeskState;
import counterstep.model.Index;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts together what is drawn, from what lies on the desk and what was last derived from it. */
final class SceneBuilder {
    private final DeskState state;
    private final Derived derived;
    private final boolean showProposed;
    private final KeptRoutes routes;
    private final Index index;

    private SceneBuilder(
            DeskState state, Derived derived, boolean showProposed, KeptRoutes routes) {
        this.routes = routes;
        this.showProposed = showProposed;
        this.state = state;
        this.derived = derived;
        this.index = Index.of(state.procedure());
    }

    static Scene of(DeskState state, Derived derived, boolean showProposed, KeptRoutes routes) {
        return new SceneBuilder(state, derived, showProposed, routes).scene();
    }

    private Scene scene() {
        Map<StepId, Card> cards = new LinkedHashMap<>();
        Map<StepId, Point2D> places = derived.columns().forAll(state.procedure());
        for (Step step : state.procedure().steps()) {
            Point2D place =
                    step.place()
                            .<Point2D>map(at -> new Point2D.Double(at.x(), at.y()))
                            .orElseGet(() -> places.get(step.id()));
            cards.put(step.id(), new Card(step.id(), place.getX(), place.getY(), face(step)));
        }
        Set<LinkEnds> drawn =
                state.procedure().links().stream()
                        .map(Link::ends)
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<LinkEnds> proposed = new LinkedHashSet<>(showProposed ? derived.proposed() : Set.of());
        proposed.removeAll(drawn);
        List<LinkEnds> links =
                Stream.concat(drawn.stream().filter(this::shown), proposed.stream()).toList();
        return Scene.of(
                cards,
                routes.of(cards, links, derived.critical(), proposed),
                derived.following(),
                proposed,
                derived.columns().lines(cards, index),
                derived.columns().emptyBoxes(cards, index),
                state.selection());
    }

    /** A link that follows from others is only drawn while it, or one of its steps, is selected. */
    private boolean shown(LinkEnds link) {
        return !derived.following().contains(link)
                || state.selection().links().contains(link)
                || state.selection().steps().contains(link.before())
                || state.selection().steps().contains(link.after());
    }

    private StepFace face(Step step) {
        return new StepFace(
                index.number(step.id()),
                step.title(),
                step.phase(),
                StepMarks.of(step, index),
                minutes(step),
                derived.tools().getOrDefault(step.id(), ""),
                Optional.ofNullable(derived.trouble().get(step.id())),
                Contents.of(step, index));
    }

    private static String minutes(Step step) {
        boolean none =
                step.seconds().isEmpty()
                        && step.actions().stream().allMatch(action -> action.waiting().isEmpty());
        int waits =
                step.actions().stream()
                        .flatMap(action -> action.waiting().stream())
                        .mapToInt(wait -> wait.seconds())
                        .sum();
        int all = step.seconds().orElse(0) + waits;
        return none ? "" : "%d:%02d".formatted(all / 60, all % 60);
    }
}
