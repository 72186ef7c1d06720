package counterstep.editor.canvas;

import counterstep.editor.desk.Replayed;
import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.StepId;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;

/**
 * Draws over the steps how far an order is walked through: steps done are pale and carry their
 * place in that order; the step that goes wrong has a heavy outline.
 */
final class ReplayMarks {
    private static final double RADIUS = 11;
    private static final int VEIL = 150;

    /** How far the tag of a tool hangs below its step. */
    private static final double TAG = 11;

    private Replayed shown = Replayed.NOTHING;

    void show(Replayed replayed) {
        shown = replayed;
    }

    void paint(Graphics2D graphics, Scene scene, double zoom) {
        Lettering letters = new Lettering(zoom);
        Optional<StepId> now = shown.now();
        shown.done().stream()
                .filter(step -> !now.equals(Optional.of(step)))
                .flatMap(step -> scene.card(step).stream())
                .forEach(card -> veil(graphics, card));
        int place = 0;
        for (StepId step : shown.done()) {
            place++;
            Palette role = now.equals(Optional.of(step)) ? Palette.ACCENT : Palette.SOFT;
            int number = place;
            scene.card(step).ifPresent(card -> badge(graphics, card, number, role, letters));
        }
        int last = place + 1;
        shown.fails()
                .flatMap(scene::card)
                .ifPresent(card -> badge(graphics, card, last, Palette.ERROR, letters));
    }

    /** The outline of the step that goes wrong, below the steps so that it crosses no tag. */
    void paintUnder(Graphics2D graphics, Scene scene) {
        shown.fails().flatMap(scene::card).ifPresent(card -> outline(graphics, card));
    }

    private static void veil(Graphics2D graphics, Card card) {
        Color ground = Palette.CANVAS.color();
        graphics.setColor(new Color(ground.getRed(), ground.getGreen(), ground.getBlue(), VEIL));
        graphics.fill(
                new Rectangle2D.Double(
                        card.x() - 1, card.y() - 1, Measures.WIDTH + 2, Measures.HEIGHT + TAG + 1));
    }

    private static void outline(Graphics2D graphics, Card card) {
        graphics.setColor(Palette.ERROR.color());
        graphics.setStroke(new BasicStroke(5));
        graphics.draw(
                new RoundRectangle2D.Double(
                        card.x() - 1,
                        card.y() - 1,
                        Measures.WIDTH + 2,
                        Measures.HEIGHT + 2,
                        2 * Measures.CORNER,
                        2 * Measures.CORNER));
    }

    private static void badge(
            Graphics2D graphics, Card card, int number, Palette role, Lettering letters) {
        graphics.setFont(letters.font(Type.LABEL_STRONG));
        String text = Integer.toString(number);
        double width = Figures.width(graphics.getFontMetrics(), text);
        double radius = RADIUS * letters.growth();
        double half = Math.max(radius, width / 2 + 6 * letters.growth());
        graphics.setColor(role.color());
        graphics.fill(
                new RoundRectangle2D.Double(
                        card.x() - half,
                        card.y() - radius,
                        2 * half,
                        2 * radius,
                        2 * radius,
                        2 * radius));
        graphics.setColor(Palette.PANEL.color());
        double baseline = card.y() + 4 * letters.growth();
        Figures.draw(graphics, text, card.x() - width / 2, baseline);
    }
}
