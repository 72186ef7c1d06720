package counterstep.editor.theme;

import counterstep.export.shape.SeverityShape;
import counterstep.model.Severity;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;

/** The mark of a severity in the colours of the theme, as an icon for lists and labels. */
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
        paint((Graphics2D) graphics, severity, x + SIZE / 2.0, y + SIZE / 2.0, 1);
    }

    /** Paints the mark of a severity around a point, enlarged by a factor. */
    public static void paint(
            Graphics2D graphics, Severity severity, double x, double y, double scale) {
        SeverityShape shape = SeverityShape.of(severity);
        graphics.setColor(color(severity).color());
        shape.ground().paint(graphics, x, y, scale);
        graphics.setColor(Palette.ON_MARK.color());
        shape.sign().paint(graphics, x, y, scale);
    }

    /** The colour that goes with a severity. */
    public static Palette color(Severity severity) {
        return switch (severity) {
            case ERROR -> Palette.ERROR;
            case DOUBT -> Palette.DOUBT;
            case HINT -> Palette.HINT;
        };
    }
}
