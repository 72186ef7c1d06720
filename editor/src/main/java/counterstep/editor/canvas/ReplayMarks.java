package counterstep.editor.canvas;

import counterstep.editor.desk.Replayed;
import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.StepId;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;

/**
 * Draws over the steps how far an order is walked through: steps done are pale and carry their
 * place in that order; the step that goes wrong has a heavy outline.
 */
final class ReplayMarks {
    private static final double RADIUS = 11;
    private static final int VEIL = 150;

    private Replayed shown = Replayed.NOTHING;

    void show(Replayed replayed) {
        shown = replayed;
    }

    void paint(Graphics2D graphics, Scene scene) {
        int place = 0;
        for (StepId step : shown.done()) {
            place++;
            boolean now = shown.now().equals(Optional.of(step));
            int number = place;
            scene.card(step).ifPresent(card -> done(graphics, card, number, now));
        }
        int last = place + 1;
        shown.fails().flatMap(scene::card).ifPresent(card -> failing(graphics, card, last));
    }

    private static void done(Graphics2D graphics, Card card, int number, boolean now) {
        if (!now) {
            Color ground = Palette.CANVAS.color();
            graphics.setColor(
                    new Color(ground.getRed(), ground.getGreen(), ground.getBlue(), VEIL));
            graphics.fill(outline(card, 0));
        }
        badge(graphics, card, number, now ? Palette.ACCENT : Palette.SOFT);
    }

    private static void failing(Graphics2D graphics, Card card, int number) {
        graphics.setColor(Palette.ERROR.color());
        graphics.setStroke(new BasicStroke(3));
        graphics.draw(outline(card, 1));
        badge(graphics, card, number, Palette.ERROR);
    }

    private static RoundRectangle2D outline(Card card, double off) {
        return new RoundRectangle2D.Double(
                card.x() - off,
                card.y() - off,
                Measures.WIDTH + 2 * off,
                Measures.HEIGHT + 2 * off,
                2 * Measures.CORNER,
                2 * Measures.CORNER);
    }

    private static void badge(Graphics2D graphics, Card card, int number, Palette role) {
        graphics.setFont(Type.LABEL_STRONG.font());
        String text = Integer.toString(number);
        double width = Figures.width(graphics.getFontMetrics(), text);
        double half = Math.max(RADIUS, width / 2 + 6);
        graphics.setColor(role.color());
        graphics.fill(
                half > RADIUS
                        ? new RoundRectangle2D.Double(
                                card.x() - half,
                                card.y() - RADIUS,
                                2 * half,
                                2 * RADIUS,
                                2 * RADIUS,
                                2 * RADIUS)
                        : new Ellipse2D.Double(
                                card.x() - RADIUS, card.y() - RADIUS, 2 * RADIUS, 2 * RADIUS));
        graphics.setColor(Palette.PANEL.color());
        Figures.draw(graphics, text, card.x() - width / 2, card.y() + 4);
    }
}
