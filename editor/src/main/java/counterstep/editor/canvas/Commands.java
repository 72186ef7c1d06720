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
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Phase;
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
import java.util.stream.Stream;

/** What can be done to the drawing, by mouse, key or menu. */
final class Commands {
    private final Desk desk;
    private final StepCells cells;
    private final Viewpoint viewpoint;
    private final TitleEditor titles;
    private final EmptyPlaces empty;
    private final Folds folds;
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
            Folds folds,
            Runnable redraw) {
        this.desk = desk;
        this.cells = cells;
        this.viewpoint = viewpoint;
        this.titles = titles;
        this.empty = empty;
        this.folds = folds;
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
        add(NewStep.below(desk.state().procedure(), last));
    }

    private void add(AddStep edit) {
        folds.unfold(Set.of(edit.step().phase()));
        apply(edit);
        StepId step = edit.step().id();
        if (cells.scene().card(step).isPresent()) {
            desk.select(Selection.of(step));
            titles.open(step);
        }
    }

    void rename(StepId step) {
        unfold(Set.of(step));
        desk.select(Selection.of(step));
        reveal(step);
        titles.open(step);
    }

    void renameSelected() {
        List.copyOf(desk.state().selection().steps()).stream().findFirst().ifPresent(this::rename);
    }

    /** Accepts a proposed link that is selected; else renames the step. */
    private void acceptOrRename() {
        Set<StepId> steps = desk.state().selection().steps();
        if (steps.stream().anyMatch(cells.scene().folding()::isFolded)) {
            unfold(steps);
        } else if (desk.state().selection().links().isEmpty()) {
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
            unfold(drawn);
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
                        .collect(
                                Collectors.toMap(
                                        step -> step,
                                        step -> Optional.of(moved(step, right, down))));
        apply(new PlaceSteps(places));
    }

    /** Steps of a folded phase go as far as its card does. */
    private CanvasPoint moved(StepId step, double right, double down) {
        Folding folding = cells.scene().folding();
        Card card = cells.scene().standsFor(step).orElseThrow();
        Point2D from = folding.undrawn(new Point2D.Double(card.x(), card.y()));
        Point2D to = folding.undrawn(new Point2D.Double(card.x() + right, card.y() + down));
        Point2D place = folding.isFolded(step) ? folding.places().get(step) : from;
        return new CanvasPoint(
                place.getX() + to.getX() - from.getX(), place.getY() + to.getY() - from.getY());
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
        selectWhole(desk.state().procedure().steps().stream().map(Step::id).toList());
    }

    /** Selects the nearest step in a direction; the first of all where none is selected. */
    void go(int right, int down) {
        if (right > 0 && empty.enter() || right < 0 && empty.leave()) {
            return;
        }
        empty.leave();
        Optional<Card> now =
                desk.state().selection().steps().stream()
                        .findFirst()
                        .flatMap(cells.scene()::standsFor);
        Optional<Card> next =
                now.isEmpty()
                        ? cells.scene().cards().values().stream().findFirst()
                        : cells.scene().cards().values().stream()
                                .filter(card -> ahead(now.get(), card, right, down) > 0)
                                .min(
                                        Comparator.comparingDouble(
                                                card -> cost(now.get(), card, right, down)));
        next.ifPresent(
                card -> {
                    selectWhole(card.steps());
                    reveal(card.step());
                });
    }

    /** Selects steps, those of a folded phase without unfolding it. */
    private void selectWhole(List<StepId> steps) {
        folds.hold(() -> desk.select(Selection.ofSteps(new LinkedHashSet<>(steps))));
    }

    /** Selects the links that a drawn one stands for, several where a phase is folded. */
    void selectLink(LinkEnds shown) {
        Folding folding = cells.scene().folding();
        Stream<LinkEnds> drawn = desk.state().procedure().links().stream().map(Link::ends);
        Stream<LinkEnds> proposed =
                desk.analysis().stream()
                        .flatMap(newest -> newest.implied().proposals().stream())
                        .map(ImpliedLink::ends);
        Set<LinkEnds> links =
                Stream.concat(drawn, proposed)
                        .filter(link -> folding.shown(link).equals(shown))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        desk.select(new Selection(Set.of(), Set.of(), links));
    }

    /** Folds the phases of the selected steps, or unfolds them; unfolds all if none is selected. */
    void foldSelected() {
        Set<Phase> phases = phases(desk.state().selection().steps());
        if (phases.isEmpty()) {
            folds.unfold(folds.phases());
        } else if (folds.phases().containsAll(phases)) {
            folds.unfold(phases);
        } else {
            folds.fold(phases);
        }
    }

    /** Folds all phases; unfolds them where all are folded. */
    void foldAll() {
        Set<Phase> phases =
                desk.state().procedure().steps().stream()
                        .map(Step::phase)
                        .collect(Collectors.toSet());
        if (folds.phases().containsAll(phases)) {
            folds.unfold(phases);
        } else {
            folds.fold(phases);
        }
    }

    /** Unfolds the phases of steps. */
    void unfold(Set<StepId> steps) {
        folds.unfold(phases(steps));
    }

    private Set<Phase> phases(Set<StepId> steps) {
        return desk.state().procedure().steps().stream()
                .filter(step -> steps.contains(step.id()))
                .map(Step::phase)
                .collect(Collectors.toSet());
    }

    void reveal(StepId step) {
        cells.scene().standsFor(step).ifPresent(card -> viewpoint.reveal(card.box()));
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
