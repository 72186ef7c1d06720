package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.StepId;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;

/** What the pointer is about to do, drawn above the steps: handles, a link on its way, a band. */
final class Feedback {
    private static final double HANDLE = 5;
    private static final BasicStroke DASHED =
            new BasicStroke(
                    1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0);

    private final StepCells cells;
    private final Runnable changed;
    private Optional<StepId> hovered = Optional.empty();
    private Optional<Drag> drag = Optional.empty();
    private Optional<StepId> aimed = Optional.empty();

    Feedback(StepCells cells, Runnable changed) {
        this.cells = cells;
        this.changed = changed;
    }

    Optional<StepId> hovered() {
        return hovered;
    }

    Optional<Drag> drag() {
        return drag;
    }

    void hover(Optional<StepId> step) {
        if (!step.equals(hovered)) {
            hovered = step;
            changed.run();
        }
    }

    void show(Optional<Drag> shown) {
        drag = shown;
        changed.run();
    }

    /** The step that would take what is dragged over it. */
    void aim(Optional<StepId> step) {
        if (!step.equals(aimed)) {
            aimed = step;
            changed.run();
        }
    }

    /** The handle of the hovered step at a point, from which a link can be dragged. */
    Optional<Point2D> handleAt(Point2D point) {
        return hovered.flatMap(cells.scene()::card).stream()
                .flatMap(card -> handles(card).stream())
                .filter(
                        handle ->
                                Math.abs(handle.getX() - point.getX()) <= Measures.TARGET / 2
                                        && Math.abs(handle.getY() - point.getY())
                                                <= Measures.TARGET / 2)
                .findFirst();
    }

    private static List<Point2D> handles(Card card) {
        return List.of(
                new Point2D.Double(card.x(), card.centreY()),
                new Point2D.Double(card.x() + Measures.WIDTH, card.centreY()));
    }

    void paint(Graphics2D graphics) {
        Scene scene = cells.seen();
        if (drag.isEmpty()) {
            hovered.flatMap(scene::card).ifPresent(card -> paintHandles(graphics, card));
        }
        drag.ifPresent(shown -> paint(graphics, scene, shown));
        aimed.flatMap(scene::card).ifPresent(card -> paintAim(graphics, card));
    }

    private static void paintHandles(Graphics2D graphics, Card card) {
        for (Point2D handle : handles(card)) {
            Ellipse2D dot =
                    new Ellipse2D.Double(
                            handle.getX() - HANDLE, handle.getY() - HANDLE, 2 * HANDLE, 2 * HANDLE);
            graphics.setColor(Palette.CARD.color());
            graphics.fill(dot);
            graphics.setColor(Palette.ACCENT.color());
            graphics.setStroke(new BasicStroke(2));
            graphics.draw(dot);
        }
    }

    private static void paintAim(Graphics2D graphics, Card card) {
        graphics.setColor(Palette.ACCENT.color());
        graphics.setStroke(new BasicStroke(2.5f));
        outline(graphics, card, 0, 0, Measures.RING);
    }

    private static void paint(Graphics2D graphics, Scene scene, Drag shown) {
        graphics.setColor(Palette.ACCENT.color());
        if (shown instanceof Drag.Moving moving) {
            graphics.setStroke(DASHED);
            moving.steps().stream()
                    .flatMap(step -> scene.standsFor(step).stream())
                    .distinct()
                    .forEach(card -> outline(graphics, card, moving.right(), moving.down(), 0));
            graphics.setStroke(new BasicStroke(1));
            moving.guides().forEach(graphics::draw);
        } else if (shown instanceof Drag.Linking linking) {
            graphics.setStroke(new BasicStroke(2));
            graphics.draw(new Line2D.Double(linking.start(), linking.to()));
            linking.target()
                    .flatMap(scene::card)
                    .ifPresent(card -> outline(graphics, card, 0, 0, Measures.RING));
        } else if (shown instanceof Drag.Band band) {
            Rectangle2D box = band.box();
            Color accent = Palette.ACCENT.color();
            graphics.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 24));
            graphics.fill(box);
            graphics.setColor(accent);
            graphics.setStroke(new BasicStroke(1));
            graphics.draw(box);
        }
    }

    private static void outline(
            Graphics2D graphics, Card card, double right, double down, double off) {
        graphics.draw(
                new RoundRectangle2D.Double(
                        card.x() + right - off,
                        card.y() + down - off,
                        Measures.WIDTH + 2 * off,
                        Measures.HEIGHT + 2 * off,
                        12 + off,
                        12 + off));
    }

    /** What an empty drawing says. */
    static void paintInvitation(Graphics2D graphics, Rectangle2D seen) {
        centred(graphics, "Double-click to add the first step", Type.HEAD, Palette.INK, seen, -10);
        String how = "Drag from the edge of a step to the next one to link them.";
        centred(graphics, how, Type.BODY, Palette.SOFT, seen, 16);
    }

    private static void centred(
            Graphics2D graphics, String text, Type type, Palette role, Rectangle2D in, double y) {
        graphics.setFont(type.font());
        graphics.setColor(role.color());
        double width = graphics.getFontMetrics().stringWidth(text);
        graphics.drawString(
                text, (float) (in.getCenterX() - width / 2), (float) (in.getCenterY() + y));
    }
}
