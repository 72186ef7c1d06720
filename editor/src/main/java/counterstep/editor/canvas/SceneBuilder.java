package counterstep.editor.canvas;

import counterstep.editor.desk.DeskState;
import counterstep.model.Index;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts together what is drawn, from what lies on the desk and what was last derived from it. */
final class SceneBuilder {
    private final DeskState state;
    private final Derived derived;
    private final Index index;

    private SceneBuilder(DeskState state, Derived derived) {
        this.state = state;
        this.derived = derived;
        this.index = Index.of(state.procedure());
    }

    static Scene of(DeskState state, Derived derived) {
        return new SceneBuilder(state, derived).scene();
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
        List<LinkEnds> links =
                state.procedure().links().stream().map(Link::ends).filter(this::shown).toList();
        return new Scene(
                cards,
                LinkRouting.of(cards, links, derived.critical()),
                derived.columns().lines(cards, index),
                derived.columns().emptyBoxes(cards, index),
                state.selection());
    }

    /** A link that others imply is only drawn while it, or one of its steps, is selected. */
    private boolean shown(LinkEnds link) {
        return !derived.redundant().contains(link)
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
                Optional.ofNullable(derived.trouble().get(step.id())));
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
