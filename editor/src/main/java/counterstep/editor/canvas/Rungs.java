package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;

/** Draws the rungs and the places that stay empty, under the steps. */
final class Rungs {
    private final TextFit fit = new TextFit();

    void paint(Graphics2D graphics, Scene scene) {
        scene.rungs().forEach(rung -> paint(graphics, rung));
        scene.emptyBoxes().forEach(empty -> paint(graphics, empty));
    }

    private void paint(Graphics2D graphics, RungLine rung) {
        if (!graphics.hitClip(
                (int) rung.x1() - 1,
                (int) Math.min(rung.y1(), rung.y2()) - 20,
                (int) (rung.x2() - rung.x1()) + 2,
                (int) Math.abs(rung.y1() - rung.y2()) + 40)) {
            return;
        }
        graphics.setColor(rung.broken() ? Palette.ERROR.color() : Palette.RUNG.color());
        graphics.setStroke(
                new BasicStroke(
                        1.4f,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_MITER,
                        10,
                        new float[] {2, 5},
                        0));
        graphics.draw(new Line2D.Double(rung.x1(), rung.y1(), rung.x2(), rung.y2()));
        label(graphics, rung);
    }

    private void label(Graphics2D graphics, RungLine rung) {
        graphics.setFont(Type.LABEL.font());
        double room = rung.x2() - rung.x1() - 8;
        String label = fit.within(rung.label(), graphics.getFontMetrics(), room);
        double width = graphics.getFontMetrics().stringWidth(label);
        double x = (rung.x1() + rung.x2() - width) / 2;
        double y = (rung.y1() + rung.y2()) / 2 - 6;
        if (rung.y1() != rung.y2() && !label.isEmpty()) {
            graphics.setColor(Palette.CANVAS.color());
            y += 10;
            graphics.fill(new RoundRectangle2D.Double(x - 4, y - 12, width + 8, 16, 8, 8));
        }
        graphics.setColor(Palette.FAINT.color());
        graphics.drawString(label, (float) x, (float) y);
    }

    private void paint(Graphics2D graphics, EmptyBox empty) {
        graphics.setColor(Palette.ERROR.color());
        graphics.setStroke(
                new BasicStroke(
                        1.5f,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_MITER,
                        10,
                        new float[] {6, 5},
                        0));
        graphics.draw(
                new RoundRectangle2D.Double(
                        empty.x(), empty.y(), Measures.WIDTH, Measures.HEIGHT, 12, 12));
        graphics.setFont(Type.BODY_STRONG.font());
        graphics.drawString("never put back", (float) empty.x() + 18, (float) empty.y() + 31);
        double text = empty.x() + 18;
        if (empty.mark().isPresent()) {
            empty.mark().get().paint(graphics, empty.x() + 26, empty.y() + 51, 1);
            text += 22;
        }
        graphics.setFont(Type.SMALL.font());
        double room = empty.x() + Measures.WIDTH - 12 - text;
        String items = fit.within(empty.items(), graphics.getFontMetrics(), room);
        graphics.drawString(items, (float) text, (float) empty.y() + 55);
    }
}
