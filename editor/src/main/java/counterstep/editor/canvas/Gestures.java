package counterstep.editor.canvas;

import counterstep.edit.AddLink;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Reads the mouse on the graph: select, move, link, band, add, rename. */
final class Gestures extends MouseAdapter {
    private static final int BEGIN_OF_DRAG = 4;
    private static final double SNAP = 7;

    private final Desk desk;
    private final StepCells cells;
    private final GraphPane pane;
    private final Viewpoint viewpoint;
    private final Feedback feedback;
    private final Commands commands;
    private final EmptyPlaces empty;
    private final Folds folds;
    private final Panning panning;
    private Optional<Point> pressedAt = Optional.empty();
    private Optional<Drag> begun = Optional.empty();
    private boolean reading;
    private boolean dropping;
    private Optional<Card> onFolded = Optional.empty();
    private boolean unfolded;

    Gestures(
            Desk desk,
            StepCells cells,
            GraphPane pane,
            Viewpoint viewpoint,
            Feedback feedback,
            Commands commands,
            EmptyPlaces empty,
            Folds folds) {
        this.desk = desk;
        this.cells = cells;
        this.pane = pane;
        this.viewpoint = viewpoint;
        this.feedback = feedback;
        this.commands = commands;
        this.empty = empty;
        this.folds = folds;
        this.panning = new Panning(pane, viewpoint);
    }

    /** Begins to read the mouse; {@code panning} comes first. */
    void install() {
        JComponent control = pane.getGraphControl();
        control.addMouseListener(this);
        control.addMouseMotionListener(this);
        panning.install();
    }

    /** Whether steps come to stand now where the pointer has brought them. */
    boolean isDropping() {
        return dropping;
    }

    /** Whether what happens now comes from the pointer, so that its target is in sight already. */
    boolean isReading() {
        return reading;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        reading = true;
        press(event);
        reading = false;
    }

    private void press(MouseEvent event) {
        pane.getGraphControl().requestFocusInWindow();
        if (panning.takes(event) || !SwingUtilities.isLeftMouseButton(event)) {
            return;
        }
        if (unfolded && event.getClickCount() > 1) {
            return; // meant for the folded phase that the first click unfolded
        }
        unfolded = false;
        Point2D at = viewpoint.toScene(event.getPoint());
        Optional<Card> card = cells.scene().cardAt(at, 0);
        Optional<Point2D> handle = feedback.handleAt(at);
        Optional<StepId> undone = empty.at(at);
        if (undone.isPresent()) {
            commands.drawCountersteps(Set.of(undone.get()));
        } else if (handle.isPresent() && event.getClickCount() == 1) {
            begin(
                    event,
                    new Drag.Linking(
                            feedback.hovered().orElseThrow(), handle.get(), at, Optional.empty()));
        } else if (card.filter(Card::isFolded).isPresent()) {
            pressFolded(event, card.get());
        } else if (card.isPresent()) {
            pressStep(event, card.get().step());
        } else {
            pressGround(event, at);
        }
    }

    private void pressStep(MouseEvent event, StepId step) {
        if (event.getClickCount() == 2) {
            commands.rename(step);
            return;
        }
        Set<StepId> selected = desk.state().selection().steps();
        if (toggles(event)) {
            select(toggled(selected, step));
        } else if (!selected.contains(step)) {
            desk.select(Selection.of(step));
        }
        Set<StepId> moved = desk.state().selection().steps();
        if (moved.contains(step)) {
            begin(event, new Drag.Moving(moved, 0, 0, List.of()));
        }
    }

    /** A click unfolds it, a drag moves all its steps. */
    private void pressFolded(MouseEvent event, Card card) {
        Set<StepId> selected = desk.state().selection().steps();
        Set<StepId> inside = new LinkedHashSet<>(card.steps());
        if (toggles(event)) {
            Set<StepId> changed = new LinkedHashSet<>(selected);
            if (!changed.removeAll(inside)) {
                changed.addAll(inside);
            }
            select(changed);
        } else {
            onFolded = Optional.of(card);
            Set<StepId> moved = selected.containsAll(inside) ? selected : inside;
            begin(event, new Drag.Moving(moved, 0, 0, List.of()));
        }
    }

    private void pressGround(MouseEvent event, Point2D at) {
        Optional<LinkEnds> link = linkAt(event);
        if (link.isPresent()) {
            commands.selectLink(link.get());
        } else if (event.getClickCount() == 2) {
            commands.addAt(at);
        } else {
            if (!toggles(event)) {
                desk.select(Selection.NONE);
            }
            begin(event, new Drag.Band(at, at));
        }
    }

    private void begin(MouseEvent event, Drag drag) {
        pressedAt = Optional.of(event.getPoint());
        begun = Optional.of(drag);
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (begun.isEmpty() || pressedAt.isEmpty()) {
            return;
        }
        boolean going = feedback.drag().isPresent();
        if (going || pressedAt.get().distance(event.getPoint()) >= BEGIN_OF_DRAG) {
            feedback.show(Optional.of(continued(begun.get(), event)));
            pane.getGraphControl().scrollRectToVisible(new Rectangle(event.getPoint()));
        }
    }

    private Drag continued(Drag drag, MouseEvent event) {
        Point2D at = viewpoint.toScene(event.getPoint());
        Point2D from = viewpoint.toScene(pressedAt.orElseThrow());
        if (drag instanceof Drag.Moving moving) {
            return Alignment.of(
                    cells.scene(),
                    moving.steps(),
                    at.getX() - from.getX(),
                    at.getY() - from.getY(),
                    SNAP / viewpoint.zoom());
        }
        if (drag instanceof Drag.Linking linking) {
            Optional<StepId> target =
                    cells.scene()
                            .stepAt(at, Measures.RING)
                            .filter(step -> !step.equals(linking.from()));
            return new Drag.Linking(linking.from(), linking.start(), at, target);
        }
        return new Drag.Band(from, at);
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        reading = true;
        release(event);
        reading = false;
    }

    private void release(MouseEvent event) {
        Optional<Drag> done = feedback.drag();
        Optional<Card> clicked = onFolded.filter(card -> done.isEmpty());
        cancel();
        if (clicked.isPresent()) {
            unfolded = true;
            folds.unfold(Set.of(clicked.get().face().phase()));
        }
        if (done.isEmpty()) {
            return;
        }
        if (done.get() instanceof Drag.Moving moving) {
            dropping = true;
            commands.move(moving.steps(), moving.right(), moving.down());
            dropping = false;
        } else if (done.get() instanceof Drag.Linking linking) {
            linking.target()
                    .ifPresent(to -> commands.apply(new AddLink(Link.drawn(linking.from(), to))));
        } else if (done.get() instanceof Drag.Band band) {
            selectIn(band, toggles(event));
        }
        mouseMoved(event);
    }

    /** Gives up what is being dragged. */
    void cancel() {
        begun = Optional.empty();
        onFolded = Optional.empty();
        pressedAt = Optional.empty();
        if (feedback.drag().isPresent()) {
            feedback.show(Optional.empty());
        }
    }

    private void selectIn(Drag.Band band, boolean more) {
        Set<StepId> inside =
                new LinkedHashSet<>(more ? desk.state().selection().steps() : Set.of());
        cells.scene().cards().values().stream()
                .filter(card -> band.box().intersects(card.box()))
                .map(Card::steps)
                .forEach(inside::addAll);
        select(inside);
    }

    private void select(Set<StepId> steps) {
        desk.select(Selection.ofSteps(steps));
    }

    private static Set<StepId> toggled(Set<StepId> selected, StepId step) {
        Set<StepId> changed = new LinkedHashSet<>(selected);
        if (!changed.remove(step)) {
            changed.add(step);
        }
        return changed;
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        Point2D at = viewpoint.toScene(event.getPoint());
        if (feedback.handleAt(at).isEmpty()) {
            feedback.hover(cells.scene().cardAt(at, 0).map(Card::step));
        }
        empty.hover(at);
        int shape =
                empty.isHovered()
                        ? Cursor.HAND_CURSOR
                        : feedback.handleAt(at).isPresent()
                                ? Cursor.CROSSHAIR_CURSOR
                                : Cursor.DEFAULT_CURSOR;
        if (!panning.ready()) {
            pane.getGraphControl().setCursor(Cursor.getPredefinedCursor(shape));
        }
    }

    @Override
    public void mouseExited(MouseEvent event) {
        feedback.hover(Optional.empty());
    }

    private Optional<LinkEnds> linkAt(MouseEvent event) {
        Object cell = pane.getCellAt(event.getX(), event.getY());
        return Optional.ofNullable(cell)
                .map(cells.getModel()::getValue)
                .filter(LinkEnds.class::isInstance)
                .map(LinkEnds.class::cast);
    }

    private static boolean toggles(MouseEvent event) {
        return event.isControlDown() || event.isShiftDown() || event.isMetaDown();
    }
}
