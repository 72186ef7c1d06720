package counterstep.editor.canvas;

import counterstep.check.Finding;
import counterstep.editor.desk.DeskState;
import counterstep.model.Index;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts together what is drawn, from what lies on the desk and what was last derived from it. */
final class SceneBuilder {
    private final DeskState state;
    private final Derived derived;
    private final Look look;
    private final List<Finding> findings;
    private final KeptRoutes routes;
    private final Index index;

    private SceneBuilder(
            DeskState state,
            Derived derived,
            List<Finding> findings,
            Look look,
            KeptRoutes routes) {
        this.findings = findings;
        this.routes = routes;
        this.look = look;
        this.state = state;
        this.derived = derived;
        this.index = Index.of(state.procedure());
    }

    /**
     * @param findings told of the document, for what is read on folded phases
     */
    static Scene of(
            DeskState state,
            Derived derived,
            List<Finding> findings,
            Look look,
            KeptRoutes routes) {
        return new SceneBuilder(state, derived, findings, look, routes).scene();
    }

    private Scene scene() {
        Folding folding = Folding.of(state.procedure(), derived.columns(), look.folded());
        Map<StepId, Card> cards = cards(folding);
        Set<LinkEnds> drawn = drawn(folding, link -> true);
        Set<LinkEnds> proposed = new LinkedHashSet<>();
        if (look.proposals()) {
            proposed.addAll(between(folding, derived.proposed()));
        }
        proposed.removeAll(drawn);
        List<LinkEnds> links =
                Stream.concat(drawn(folding, this::shown).stream(), proposed.stream()).toList();
        Set<LinkEnds> critical = between(folding, derived.critical());
        return Scene.of(
                cards,
                routes.of(cards, links, critical, proposed),
                following(folding),
                proposed,
                derived.columns().lines(cards, folding, index),
                derived.columns().emptyBoxes(cards, folding, index),
                folding,
                state.selection());
    }

    private Map<StepId, Card> cards(Folding folding) {
        Map<StepId, Card> cards = new LinkedHashMap<>();
        for (Step step : state.procedure().steps()) {
            if (!folding.isFolded(step.id())) {
                Point2D at = folding.drawn(folding.places().get(step.id()));
                cards.put(step.id(), new Card(step.id(), at.getX(), at.getY(), face(step)));
            } else if (folding.shown(step.id()).equals(step.id())) {
                FoldedPhase folded = folding.phases().get(step.phase());
                Point2D at = folded.place();
                Face face = PhaseFace.of(folded.steps(), index, findings);
                cards.put(step.id(), new Card(step.id(), at.getX(), at.getY(), face));
            }
        }
        return cards;
    }

    /** The drawn links that are asked for, between the cards that are shown. */
    private Set<LinkEnds> drawn(Folding folding, Predicate<LinkEnds> asked) {
        return state.procedure().links().stream()
                .map(Link::ends)
                .filter(asked)
                .filter(link -> !folding.isInside(link))
                .map(folding::shown)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Set<LinkEnds> between(Folding folding, Set<LinkEnds> links) {
        return folding.phases().isEmpty()
                ? links
                : links.stream()
                        .filter(link -> !folding.isInside(link))
                        .map(folding::shown)
                        .collect(Collectors.toSet());
    }

    /** Of several links between two cards one that follows from nothing is enough. */
    private Set<LinkEnds> following(Folding folding) {
        if (folding.phases().isEmpty()) {
            return derived.following();
        }
        Set<LinkEnds> following = new HashSet<>(between(folding, derived.following()));
        following.removeAll(drawn(folding, link -> !derived.following().contains(link)));
        return following;
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
