package counterstep.editor.bench;

import counterstep.editor.theme.Palette;
import counterstep.export.shape.ScrewSide;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.util.List;
import javax.swing.Icon;

/** A screw from the side; all of one list at the same scale. */
final class ScrewIcon implements Icon {
    private static final int WIDTH = 66;
    private static final int HEIGHT = 22;
    private static final double LARGEST = 5.5;

    private final ScrewSide screw;
    private final double scale;

    private ScrewIcon(ScrewSide screw, double scale) {
        this.screw = screw;
        this.scale = scale;
    }

    /** How many pixels a millimetre has so that the largest of some screws finds room. */
    static double scale(List<ScrewSide> screws) {
        return screws.stream()
                .mapToDouble(
                        each -> Math.min((WIDTH - 4) / each.width(), (HEIGHT - 2) / each.height()))
                .reduce(LARGEST, Math::min);
    }

    static ScrewIcon of(ScrewSide screw, double scale) {
        return new ScrewIcon(screw, scale);
    }

    @Override
    public int getIconWidth() {
        return WIDTH;
    }

    @Override
    public int getIconHeight() {
        return HEIGHT;
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        AffineTransform placed = AffineTransform.getTranslateInstance(x + 1, y + HEIGHT / 2.0);
        placed.scale(scale, scale);
        own.setColor(Palette.TAG.color());
        own.fill(placed.createTransformedShape(screw.shank()));
        own.fill(placed.createTransformedShape(screw.head()));
        own.setColor(Palette.INK.color());
        own.setStroke(new BasicStroke(0.8f));
        own.draw(placed.createTransformedShape(screw.thread()));
        own.setStroke(new BasicStroke(1.2f));
        own.draw(placed.createTransformedShape(screw.shank()));
        own.draw(placed.createTransformedShape(screw.head()));
        own.dispose();
    }
}
