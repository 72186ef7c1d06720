package counterstep.editor.canvas;

import counterstep.edit.AcceptLinks;
import counterstep.edit.AddStep;
import counterstep.edit.DeleteLinks;
import counterstep.edit.DeleteSteps;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.edit.PlaceSteps;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.implied.ImpliedLink;
import counterstep.mirror.DrawCounterstep;
import counterstep.model.CanvasPoint;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What can be done to the drawing, by mouse, key or menu. */
final class Commands {
    private final Desk desk;
    private final StepCells cells;
    private final Viewpoint viewpoint;
    private final TitleEditor titles;
    private final EmptyPlaces empty;
    private final Runnable redraw;

    /**
     * @param redraw draws the state again, for an edit that was refused
     */
    Commands(
            Desk desk,
            StepCells cells,
            Viewpoint viewpoint,
            TitleEditor titles,
            EmptyPlaces empty,
            Runnable redraw) {
        this.desk = desk;
        this.cells = cells;
        this.viewpoint = viewpoint;
        this.titles = titles;
        this.empty = empty;
        this.redraw = redraw;
    }

    void apply(Edit edit) {
        if (desk.apply(edit).isPresent()) {
            redraw.run();
        }
    }

    void addAt(Point2D point) {
        add(NewStep.at(desk.state().procedure(), cells.scene(), point));
    }

    void addAfterSelection() {
        List<StepId> selected = List.copyOf(desk.state().selection().steps());
        Optional<StepId> last =
                selected.isEmpty()
                        ? Optional.empty()
                        : Optional.of(selected.get(selected.size() - 1));
        add(NewStep.after(desk.state().procedure(), last));
    }

    private void add(AddStep edit) {
        apply(edit);
        StepId step = edit.step().id();
        if (cells.scene().card(step).isPresent()) {
            desk.select(Selection.of(step));
            titles.open(step);
        }
    }

    void rename(StepId step) {
        desk.select(Selection.of(step));
        reveal(step);
        titles.open(step);
    }

    void renameSelected() {
        List.copyOf(desk.state().selection().steps()).stream().findFirst().ifPresent(this::rename);
    }

    /** Accepts a proposed link that is selected; else renames the step. */
    private void acceptOrRename() {
        if (desk.state().selection().links().isEmpty()) {
            renameSelected();
        } else {
            acceptProposed();
        }
    }

    /** Accepts the selected proposals; those at selected steps; all where nothing is selected. */
    void acceptProposed() {
        Selection selection = desk.state().selection();
        List<LinkEnds> accepted =
                desk.analysis().stream()
                        .flatMap(newest -> newest.implied().proposals().stream())
                        .map(ImpliedLink::ends)
                        .filter(link -> selection.isEmpty() || touches(selection, link))
                        .toList();
        if (!accepted.isEmpty()) {
            apply(new AcceptLinks(accepted));
        }
    }

    private static boolean touches(Selection selection, LinkEnds link) {
        return selection.links().contains(link)
                || selection.steps().contains(link.before())
                || selection.steps().contains(link.after());
    }

    /** Draws in the empty place where the keys are, else accepts or renames. */
    void enter() {
        empty.entered()
                .ifPresentOrElse(step -> drawCountersteps(Set.of(step)), this::acceptOrRename);
    }

    /** Draws what undoes some steps, or all where none is named, and selects what was drawn. */
    boolean drawCountersteps(Set<StepId> steps) {
        Procedure before = desk.state().procedure();
        DrawCounterstep draw = DrawCounterstep.of(before, steps);
        apply(draw);
        Set<Step> old = Set.copyOf(before.steps());
        Set<StepId> drawn =
                desk.state().procedure().steps().stream()
                        .filter(step -> !old.contains(step))
                        .map(Step::id)
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        if (!drawn.isEmpty()) {
            desk.select(Selection.ofSteps(drawn));
            reveal(drawn.iterator().next());
        }
        return !drawn.isEmpty();
    }

    boolean drawSelected() {
        return drawCountersteps(desk.state().selection().steps());
    }

    void deleteSelected() {
        Selection selection = desk.state().selection();
        List<Edit> edits = new ArrayList<>();
        if (!selection.links().isEmpty()) {
            edits.add(new DeleteLinks(selection.links()));
        }
        if (!selection.steps().isEmpty()) {
            edits.add(new DeleteSteps(selection.steps()));
        }
        if (edits.size() == 1) {
            apply(edits.get(0));
        } else if (edits.size() > 1) {
            apply(new Edits("Delete steps and links", edits));
        }
    }

    void move(Set<StepId> steps, double right, double down) {
        Map<StepId, Optional<CanvasPoint>> places =
                steps.stream()
                        .flatMap(step -> cells.scene().card(step).stream())
                        .collect(
                                Collectors.toMap(
                                        Card::step,
                                        card ->
                                                Optional.of(
                                                        new CanvasPoint(
                                                                card.x() + right,
                                                                card.y() + down))));
        apply(new PlaceSteps(places));
    }

    /** Gives selected steps, or all where none is selected, back to the mirror layout. */
    void returnToMirror() {
        Set<StepId> selected = desk.state().selection().steps();
        Map<StepId, Optional<CanvasPoint>> places =
                desk.state().procedure().steps().stream()
                        .filter(step -> step.place().isPresent())
                        .map(Step::id)
                        .filter(step -> selected.isEmpty() || selected.contains(step))
                        .collect(Collectors.toMap(step -> step, step -> Optional.empty()));
        if (!places.isEmpty()) {
            apply(new PlaceSteps(places));
        }
    }

    void selectAll() {
        desk.select(
                Selection.ofSteps(
                        desk.state().procedure().steps().stream()
                                .map(Step::id)
                                .collect(Collectors.toCollection(LinkedHashSet::new))));
    }

    /** Selects the nearest step in a direction; the first of all where none is selected. */
    void go(int right, int down) {
        if (right > 0 && empty.enter() || right < 0 && empty.leave()) {
            return;
        }
        empty.leave();
        Optional<Card> now =
                desk.state().selection().steps().stream().findFirst().flatMap(cells.scene()::card);
        Optional<Card> next =
                now.isEmpty()
                        ? cells.scene().cards().values().stream().findFirst()
                        : cells.scene().cards().values().stream()
                                .filter(card -> ahead(now.get(), card, right, down) > 0)
                                .min(
                                        Comparator.comparingDouble(
                                                card -> cost(now.get(), card, right, down)));
        next.map(Card::step)
                .ifPresent(
                        step -> {
                            desk.select(Selection.of(step));
                            reveal(step);
                        });
    }

    void reveal(StepId step) {
        cells.scene().card(step).ifPresent(card -> viewpoint.reveal(card.box()));
    }

    private static double ahead(Card from, Card to, int right, int down) {
        return (to.x() - from.x()) * right + (to.y() - from.y()) * down;
    }

    /** Straight ahead is near; aside counts more, so that up and down stay in the column. */
    private static double cost(Card from, Card to, int right, int down) {
        double aside = Math.abs((to.x() - from.x()) * down) + Math.abs((to.y() - from.y()) * right);
        return ahead(from, to, right, down) + 4 * aside;
    }
}
