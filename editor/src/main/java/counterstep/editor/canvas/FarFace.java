package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import counterstep.model.Phase;
import counterstep.model.Severity;
import java.awt.FontMetrics;
import java.awt.Graphics2D;

/** A step from far: its number and its trouble, as large on the screen as the step allows. */
final class FarFace {
    static final double LEFT = 25;

    /** Of the screen, as the theme has its strong text. */
    private static final double NUMBER = 13;

    private static final double LEAST = 11;

    /** Of the drawing: a taller number would touch the outline. */
    private static final double MOST = 46;

    private static final double MARK = 66;
    private static final double EDGE = 0.6;

    private FarFace() {}

    static void paint(Graphics2D graphics, StepFace face, double zoom) {
        head(graphics, face.phase(), zoom);
        FontMetrics metrics = graphics.getFontMetrics();
        graphics.drawString("" + face.number(), (float) LEFT, (float) baseline(zoom));
        double room = Measures.WIDTH - LEFT - metrics.stringWidth("" + face.number());
        face.trouble()
                .filter(severity -> room > 2 * reach(zoom))
                .ifPresent(severity -> trouble(graphics, severity, 0, 0, zoom));
    }

    /** The phase's edge; after it font and colour are set for the number. */
    static void head(Graphics2D graphics, Phase phase, double zoom) {
        PhaseEdges.paint(graphics, phase, Measures.HEIGHT, Math.min(2, Math.max(1, EDGE / zoom)));
        graphics.setFont(Type.BODY_STRONG.font().deriveFont((float) number(zoom)));
        graphics.setColor(Palette.INK.color());
    }

    /** Where the number stands. */
    static double baseline(double zoom) {
        return Measures.HEIGHT / 2 + number(zoom) * 0.36;
    }

    /** Width of the mark of a severity in pixels of the drawing. */
    static double markWidth(double zoom) {
        return 2 * reach(zoom);
    }

    /** Height of the number's letters in pixels of the drawing. */
    static double number(double zoom) {
        return Math.max(LEAST / zoom, Math.min(NUMBER / zoom, MOST));
    }

    /** The mark of a severity at the right of a step whose corner is at a place. */
    static void trouble(Graphics2D graphics, Severity severity, double x, double y, double zoom) {
        double right = x + Measures.WIDTH - reach(zoom) - 4;
        double scale = 2 * reach(zoom) / SeverityMark.SIZE;
        SeverityMark.paint(graphics, severity, right, y + Measures.HEIGHT / 2, scale);
    }

    private static double reach(double zoom) {
        return Math.min(SeverityMark.SIZE / zoom, MARK) / 2;
    }
}
