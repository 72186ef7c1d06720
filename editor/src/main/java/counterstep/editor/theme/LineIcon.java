package counterstep.editor.theme;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import javax.swing.Icon;

/**
 * Line icons on a grid of 16, drawn in the text colour of the component they stand on; only where a
 * drawing says more than a word.
 */
public enum LineIcon implements Icon {
    /** One more. */
    ADD(new double[][] {{8, 3, 8, 13}, {3, 8, 13, 8}}),
    /** Take it off the list. */
    REMOVE(new double[][] {{4, 4, 12, 12}, {12, 4, 4, 12}}),
    /** Earlier in a list. */
    UP(new double[][] {{4, 10, 8, 6, 12, 10}}),
    /** Later in a list. */
    DOWN(new double[][] {{4, 6, 8, 10, 12, 6}}),
    /** Nothing left to find. */
    DONE(new double[][] {{3, 8.5, 6.5, 12.5, 13, 3.5}});

    private static final int GRID = 16;

    @SuppressWarnings("ImmutableEnumChecker") // never handed out, never written to
    private final double[][] lines;

    LineIcon(double[][] lines) {
        this.lines = lines;
    }

    @Override
    public int getIconWidth() {
        return GRID;
    }

    @Override
    public int getIconHeight() {
        return GRID;
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setColor(
                component == null || !component.isEnabled()
                        ? Palette.FAINT.color()
                        : component.getForeground());
        own.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        own.translate(x, y);
        for (double[] line : lines) {
            own.draw(path(line));
        }
        own.dispose();
    }

    private static Path2D path(double[] line) {
        Path2D path = new Path2D.Double();
        path.moveTo(line[0], line[1]);
        for (int next = 2; next < line.length; next += 2) {
            path.lineTo(line[next], line[next + 1]);
        }
        return path;
    }
}
