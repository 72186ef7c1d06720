package counterstep.export.shape;

import java.awt.BasicStroke;
import java.awt.Shape;

/**
 * One outline of a mark, filled or drawn as a line.
 *
 * @param outline in pixels at 100 %
 * @param lineWidth in the same pixels; 0 = filled
 */
public record Piece(Shape outline, double lineWidth) {
    static Piece filled(Shape outline) {
        return new Piece(outline, 0);
    }

    static Piece line(Shape outline, double width) {
        return new Piece(outline, width);
    }

    /** Whether the outline is filled rather than drawn as a line. */
    public boolean isFilled() {
        return lineWidth == 0;
    }

    /** What is inked: the outline itself, or the line along it. */
    public Shape inked() {
        return isFilled() ? outline : stroke().createStrokedShape(outline);
    }

    private BasicStroke stroke() {
        return new BasicStroke((float) lineWidth, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
}
