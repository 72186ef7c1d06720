package counterstep.editor.canvas;

import counterstep.editor.desk.Desk;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.StepId;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.font.TextAttribute;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Map;
import java.util.Optional;

/** The verb in the place of a counterstep that is not there, for the pointer and for the keys. */
final class EmptyPlaces {
    private static final String VERB = "Draw it";
    private static final double VERB_WIDTH = 66;
    private static final double VERB_HEIGHT = 34;

    private final Desk desk;
    private final StepCells cells;
    private final Runnable changed;
    private Optional<StepId> hovered = Optional.empty();
    private Optional<StepId> entered = Optional.empty();

    /**
     * @param changed draws the places again
     */
    EmptyPlaces(Desk desk, StepCells cells, Runnable changed) {
        this.desk = desk;
        this.cells = cells;
        this.changed = changed;
    }

    /** Where the verb of a place can be clicked, in pixels of the drawing. */
    static Rectangle2D verb(EmptyBox empty) {
        return new Rectangle2D.Double(
                empty.x() + Measures.WIDTH - VERB_WIDTH, empty.y(), VERB_WIDTH, VERB_HEIGHT);
    }

    /** The step whose counterstep the verb at a point draws. */
    Optional<StepId> at(Point2D point) {
        return cells.scene().emptyBoxes().stream()
                .filter(empty -> verb(empty).contains(point))
                .map(EmptyBox::off)
                .findFirst();
    }

    void hover(Point2D point) {
        Optional<StepId> now = at(point);
        if (!now.equals(hovered)) {
            hovered = now;
            changed.run();
        }
    }

    boolean isHovered() {
        return hovered.isPresent();
    }

    /** Goes from the selected step into the empty place beside it, if it has one. */
    boolean enter() {
        Optional<StepId> selected = desk.state().selection().onlyStep();
        if (selected.flatMap(this::box).isEmpty() || entered().isPresent()) {
            return false;
        }
        entered = selected;
        changed.run();
        return true;
    }

    /** The step in whose empty place the keys are; it is left when something else is selected. */
    Optional<StepId> entered() {
        return entered.filter(step -> desk.state().selection().onlyStep().equals(Optional.of(step)))
                .filter(step -> box(step).isPresent());
    }

    boolean leave() {
        boolean was = entered().isPresent();
        entered = Optional.empty();
        if (was) {
            changed.run();
        }
        return was;
    }

    private Optional<EmptyBox> box(StepId off) {
        return cells.seen().emptyBoxes().stream()
                .filter(empty -> empty.off().equals(off))
                .findFirst();
    }

    void paint(Graphics2D graphics, double zoom) {
        entered().flatMap(this::box).ifPresent(empty -> ring(graphics, empty));
        if (Detail.at(zoom) != Detail.FAR) {
            Lettering letters = new Lettering(zoom);
            cells.seen().emptyBoxes().forEach(empty -> verb(graphics, empty, letters));
        }
    }

    private static void ring(Graphics2D graphics, EmptyBox empty) {
        double off = Measures.RING;
        graphics.setColor(Palette.ACCENT.color());
        graphics.setStroke(new BasicStroke(2));
        graphics.draw(
                new RoundRectangle2D.Double(
                        empty.x() - off,
                        empty.y() - off,
                        Measures.WIDTH + 2 * off,
                        Measures.HEIGHT + 2 * off,
                        18,
                        18));
    }

    private void verb(Graphics2D graphics, EmptyBox empty, Lettering letters) {
        boolean ready =
                hovered.equals(Optional.of(empty.off()))
                        || entered().equals(Optional.of(empty.off()));
        Map<TextAttribute, Object> line =
                Map.of(TextAttribute.UNDERLINE, ready ? TextAttribute.UNDERLINE_ON : -1);
        graphics.setFont(letters.font(Type.SMALL_STRONG).deriveFont(line));
        graphics.setColor(Palette.ACCENT.color());
        double right = empty.x() + Measures.WIDTH - 10;
        double width = graphics.getFontMetrics().stringWidth(VERB);
        graphics.drawString(VERB, (float) (right - width), (float) empty.y() + 22);
    }
}
