package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.Severity;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Draws the rungs and the places that stay empty, under the steps. */
final class Rungs {
    private final TextFit fit = new TextFit();
    private List<RungLine> labelled = List.of();
    private List<RungLabel> labels = List.of();
    private double labelledAt;

    /**
     * Draws what is seen.
     *
     * @param still where everything stands; the names are laid out there and go with their rungs
     */
    void paint(Graphics2D graphics, Scene scene, Scene still, double zoom) {
        Lettering letters = new Lettering(zoom);
        boolean read = Detail.at(zoom) != Detail.FAR;
        Rectangle seen = graphics.getClipBounds();
        scene.rungs().stream()
                .filter(rung -> seen == null || seen.intersectsLine(line(rung)))
                .forEach(rung -> paint(graphics, rung));
        if (read) {
            labels(graphics, still, letters)
                    .forEach(
                            label ->
                                    label.onRungOf(still.rungs(), scene.rungs())
                                            .paint(graphics, letters));
        }
        for (EmptyBox empty : scene.emptyBoxes()) {
            outline(graphics, empty);
            if (read) {
                words(graphics, empty, letters);
            } else {
                FarFace.trouble(graphics, Severity.ERROR, empty.x(), empty.y(), zoom);
            }
        }
    }

    private static Line2D line(RungLine rung) {
        return new Line2D.Double(rung.x1(), rung.y1(), rung.x2(), rung.y2());
    }

    private static void paint(Graphics2D graphics, RungLine rung) {
        graphics.setColor(rung.broken() ? Palette.ERROR.color() : Palette.RUNG.color());
        graphics.setStroke(dashed(1.4f, 2));
        graphics.draw(line(rung));
    }

    private static BasicStroke dashed(float width, float dash) {
        float[] dashes = {dash, 5};
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
    }

    /** The names on the rungs, laid out once for each scene and zoom. */
    private List<RungLabel> labels(Graphics2D graphics, Scene scene, Lettering letters) {
        if (!scene.rungs().equals(labelled) || letters.growth() != labelledAt) {
            graphics.setFont(letters.font(Type.LABEL));
            labels = RungLabel.of(scene.rungs(), graphics.getFontMetrics(), fit);
            labelled = scene.rungs();
            labelledAt = letters.growth();
        }
        return labels;
    }

    private static void outline(Graphics2D graphics, EmptyBox empty) {
        graphics.setColor(Palette.ERROR.color());
        graphics.setStroke(dashed(1.5f, 6));
        graphics.draw(
                new RoundRectangle2D.Double(
                        empty.x(), empty.y(), Measures.WIDTH, Measures.HEIGHT, 12, 12));
    }

    private void words(Graphics2D graphics, EmptyBox empty, Lettering letters) {
        graphics.setFont(letters.font(Type.BODY_STRONG));
        graphics.setColor(Palette.ERROR.color());
        graphics.drawString("never put back", (float) empty.x() + 18, (float) empty.y() + 29);
        double text = empty.x() + 18;
        if (empty.mark().isPresent()) {
            double grown = Math.sqrt(letters.growth());
            empty.mark().get().paint(graphics, empty.x() + 26, empty.y() + 51, grown);
            text += 22 * Math.max(1, grown);
        }
        graphics.setFont(letters.font(Type.SMALL));
        double room = empty.x() + Measures.WIDTH - 12 - text;
        String items = fit.within(empty.items(), graphics.getFontMetrics(), room);
        graphics.drawString(items, (float) text, (float) empty.y() + 55);
    }
}
