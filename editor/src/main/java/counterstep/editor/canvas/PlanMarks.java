package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * Draws around the steps what the plan says of them: a heavy line below those that may not be late
 * and below a folded phase with such a step, by how much the others may, the tool in hand as a
 * ribbon.
 */
final class PlanMarks {
    private static final double INSET = 8;
    private static final double FALL = 9;
    private static final double TAG_HEIGHT = 18;

    private PlanShown shown = PlanShown.NOTHING;
    private boolean critical = true;
    private boolean tools;

    void show(PlanShown next) {
        shown = next;
    }

    void showCritical(boolean wanted) {
        critical = wanted;
    }

    void showTools(boolean wanted) {
        tools = wanted;
    }

    /** What was derived, without the critical links where they are hidden. */
    Derived apply(Derived derived) {
        return critical ? derived : derived.withoutCritical();
    }

    /** What lies below the steps. */
    void paintUnder(Graphics2D graphics, Scene scene, double zoom) {
        if (tools) {
            ToolRibbon.paint(graphics, scene, shown);
        }
        if (critical) {
            graphics.setColor(Palette.CRITICAL.color());
            graphics.setStroke(new BasicStroke((float) (4 * new Lettering(zoom).line())));
            scene.cards().values().stream()
                    .filter(card -> card.steps().stream().anyMatch(shown.critical()::contains))
                    .map(Card::box)
                    .filter(box -> seen(graphics, box))
                    .forEach(
                            box ->
                                    graphics.draw(
                                            new Line2D.Double(
                                                    box.getX() + INSET,
                                                    box.getMaxY() + 1,
                                                    box.getMaxX() - INSET,
                                                    box.getMaxY() + 1)));
        }
    }

    /** What hangs from the steps; not read from far. */
    void paintOver(Graphics2D graphics, Scene scene, double zoom) {
        if (!critical || Detail.at(zoom) == Detail.FAR) {
            return;
        }
        Lettering letters = new Lettering(zoom);
        graphics.setFont(letters.font(Type.LABEL));
        for (Card card : scene.cards().values()) {
            String later = shown.later().get(card.step());
            boolean itself = scene.card(card.step()).isPresent();
            if (itself && later != null && seen(graphics, card.box())) {
                later(graphics, card.box(), "float " + later, letters.growth());
            }
        }
    }

    private static void later(Graphics2D graphics, Rectangle2D box, String words, double growth) {
        FontMetrics metrics = graphics.getFontMetrics();
        double width = metrics.stringWidth(words) + 14 * growth;
        double height = Math.min(TAG_HEIGHT, TAG_HEIGHT * growth);
        double left = box.getMaxX() - 10 - width;
        double top = box.getMaxY() + FALL - height;
        RoundRectangle2D tag =
                new RoundRectangle2D.Double(left, top, width, height, height, height);
        graphics.setColor(Palette.CARD.color());
        graphics.fill(tag);
        graphics.setColor(Palette.OUTLINE.color());
        graphics.setStroke(new BasicStroke((float) Math.min(1, growth)));
        graphics.draw(tag);
        graphics.setColor(Palette.SOFT.color());
        graphics.drawString(
                words, (float) (left + 7 * growth), (float) (top + height / 2 + 4 * growth));
    }

    static boolean seen(Graphics2D graphics, Rectangle2D box) {
        Rectangle clip = graphics.getClipBounds();
        return clip == null
                || clip.intersects(
                        box.getX() - 40,
                        box.getY() - 40,
                        box.getWidth() + 80,
                        box.getHeight() + 80);
    }
}
