package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.export.shape.PhaseEdge;
import counterstep.model.Phase;
import java.awt.Graphics2D;

/** The left edge of a step, which tells its phase. */
final class PhaseEdges {
    private static final double EDGE = 5;

    /** The tick is wider than a bar and stands a little further in. */
    private static final double VERIFY_EDGE = 7;

    private static final double INSET = 8;

    private PhaseEdges() {}

    /** Beside a step of so many pixels' height, as broad as the factor says. */
    static void paint(Graphics2D graphics, Phase phase, double height, double breadth) {
        graphics.setColor(Palette.SOFT.color());
        double edge = phase == Phase.VERIFY ? VERIFY_EDGE : EDGE;
        PhaseEdge.of(phase, (height - 2 * INSET) / breadth).paint(graphics, edge, INSET, breadth);
    }
}
