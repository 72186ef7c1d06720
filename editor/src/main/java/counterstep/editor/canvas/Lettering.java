package counterstep.editor.canvas;

import counterstep.editor.theme.Type;
import java.awt.Font;

/**
 * Fonts of the drawing at a zoom, in pixels at 100 %: as the theme has them, but never so small
 * that they would stand on the screen with less than 11 pixels; from near as large on the screen as
 * the theme has them, so that coming nearer shows more, and growing only where all there is has
 * room.
 *
 * @param zoom at which they are shown
 */
record Lettering(double zoom) {
    private static final float LEAST = 11;

    /** From this zoom on letters grow again. */
    private static final double ROOMY = 1.9;

    /** The font of a role, grown or shrunk as the zoom asks. */
    Font font(Type type) {
        Font font = type.font();
        double growth = growth(font.getSize2D());
        return growth == 1 ? font : font.deriveFont((float) (font.getSize2D() * growth));
    }

    /** By how much the smallest letters grow; marks beside them grow alike. */
    double growth() {
        return growth(LEAST);
    }

    /** By how much lines get thinner, so that they stay lines from near. */
    double line() {
        return Math.min(1, near());
    }

    private double growth(float size) {
        return Detail.at(zoom) == Detail.NEAR ? near() : Math.max(1, LEAST / (size * zoom));
    }

    private double near() {
        return Math.max(1, zoom / ROOMY) / zoom;
    }
}
