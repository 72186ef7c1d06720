package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Draws the rungs and the places that stay empty, under the steps. */
final class Rungs {
    private final TextFit fit = new TextFit();
    private List<RungLine> labelled = List.of();
    private List<RungLabel> labels = List.of();

    void paint(Graphics2D graphics, Scene scene, double zoom) {
        scene.rungs().forEach(rung -> line(graphics, rung));
        if (zoom >= Measures.FAR) {
            labels(graphics, scene).forEach(label -> label.paint(graphics));
        }
        scene.emptyBoxes().forEach(empty -> paint(graphics, empty));
    }

    private static void line(Graphics2D graphics, RungLine rung) {
        graphics.setColor(rung.broken() ? Palette.ERROR.color() : Palette.RUNG.color());
        graphics.setStroke(dashed(1.4f, 2));
        graphics.draw(new Line2D.Double(rung.x1(), rung.y1(), rung.x2(), rung.y2()));
    }

    private static BasicStroke dashed(float width, float dash) {
        float[] dashes = {dash, 5};
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
    }

    /** The names on the rungs, laid out once for each scene. */
    private List<RungLabel> labels(Graphics2D graphics, Scene scene) {
        if (!scene.rungs().equals(labelled)) {
            graphics.setFont(Type.LABEL.font());
            labels = RungLabel.of(scene.rungs(), graphics.getFontMetrics(), fit);
            labelled = scene.rungs();
        }
        return labels;
    }

    private void paint(Graphics2D graphics, EmptyBox empty) {
        graphics.setColor(Palette.ERROR.color());
        graphics.setStroke(dashed(1.5f, 6));
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
