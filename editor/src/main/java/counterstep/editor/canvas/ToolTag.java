package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;

/** The tool that is picked up for a step, in a tag that hangs from its lower edge. */
final class ToolTag {
    private static final double FALL = 9;
    private static final double HEIGHT = 18;

    /** What 'float 88:88' takes beside it, in letters that have not grown. */
    private static final double FLOAT = 76;

    private ToolTag() {}

    /** How long the words may be below a card of that width, with the float beside them. */
    static double room(double width, double growth) {
        return width - 44 - FLOAT * growth;
    }

    /** In the font that is set; one that is grown rises, to stay clear of the step below. */
    static void paint(
            Graphics2D graphics,
            String tool,
            TextFit fit,
            double x,
            double edge,
            double most,
            double growth) {
        FontMetrics metrics = graphics.getFontMetrics();
        String text = fit.within(tool, metrics, most);
        double width = metrics.stringWidth(text) + 16;
        double height = Math.max(HEIGHT, 15 * growth);
        double top = edge + FALL - height;
        RoundRectangle2D tag = new RoundRectangle2D.Double(x, top, width, height, height, height);
        graphics.setColor(Palette.TAG.color());
        graphics.fill(tag);
        graphics.setColor(Palette.OUTLINE.color());
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(tag);
        graphics.setColor(Palette.INK.color());
        graphics.drawString(text, (float) x + 8, (float) (top + height / 2 + 4 * growth));
    }
}
