package counterstep.editor.theme;

import counterstep.model.Severity;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;

/**
 * The mark of a severity: square, diamond or circle with a sign in it, told apart by shape first.
 * Never the safety alert triangle, which belongs to hazards.
 */
public final class SeverityMark implements Icon {
    /** Width and height of the icon. */
    public static final int SIZE = 20;

    private final Severity severity;

    /** The mark of a severity. */
    public SeverityMark(Severity severity) {
        this.severity = severity;
    }

    @Override
    public int getIconWidth() {
        return SIZE;
    }

    @Override
    public int getIconHeight() {
        return SIZE;
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.translate(x, y);
        paint(own);
        own.dispose();
    }

    /** Paints the mark with its middle at 10, 10. */
    public void paint(Graphics2D graphics) {
        graphics.setStroke(new BasicStroke(1f));
        graphics.setColor(color().color());
        graphics.fill(outline());
        graphics.setColor(Palette.ON_MARK.color());
        graphics.setFont(Type.LABEL_BOLD.font());
        graphics.fill(sign(graphics, Type.LABEL_BOLD.font()));
    }

    /** The colour that goes with it. */
    public Palette color() {
        return switch (severity) {
            case ERROR -> Palette.ERROR;
            case DOUBT -> Palette.DOUBT;
            case HINT -> Palette.HINT;
        };
    }

    private Shape outline() {
        return switch (severity) {
            case ERROR -> new RoundRectangle2D.Double(2, 2, 16, 16, 6, 6);
            case DOUBT -> diamond();
            case HINT -> new Ellipse2D.Double(2, 2, 16, 16);
        };
    }

    private static Shape diamond() {
        Path2D path = new Path2D.Double();
        path.moveTo(10, 0);
        path.lineTo(20, 10);
        path.lineTo(10, 20);
        path.lineTo(0, 10);
        path.closePath();
        return path;
    }

    private Shape sign(Graphics2D graphics, Font font) {
        String sign =
                switch (severity) {
                    case ERROR -> "!";
                    case DOUBT -> "?";
                    case HINT -> "i";
                };
        Shape glyph = font.createGlyphVector(graphics.getFontRenderContext(), sign).getOutline();
        Rectangle2D bounds = glyph.getBounds2D();
        return AffineTransform.getTranslateInstance(
                        SIZE / 2.0 - bounds.getCenterX(), SIZE / 2.0 - bounds.getCenterY())
                .createTransformedShape(glyph);
    }
}
