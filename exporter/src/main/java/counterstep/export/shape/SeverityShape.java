package counterstep.export.shape;

import static counterstep.export.shape.Outline.circle;
import static counterstep.export.shape.Outline.closed;
import static counterstep.export.shape.Outline.roundBox;

import counterstep.model.Severity;
import java.awt.geom.Path2D;

/**
 * The mark of a severity: square with !, diamond with ?, circle with i. Never the triangle, which
 * is the safety alert symbol and belongs to hazards.
 *
 * @param ground the figure, to be painted in the colour of the severity
 * @param sign what stands in it, to be painted in the colour behind
 */
public record SeverityShape(Mark ground, Mark sign) {
    private static final SeverityShape ERROR =
            new SeverityShape(
                    Mark.of(Piece.filled(roundBox(-8, -8, 16, 16, 3))),
                    Mark.of(
                            Piece.filled(roundBox(-1.1, -4.8, 2.2, 6, 1)),
                            Piece.filled(circle(0, 3.5, 1.3))));
    private static final SeverityShape DOUBT =
            new SeverityShape(
                    Mark.of(Piece.filled(closed(0, -10, 10, 0, 0, 10, -10, 0))),
                    Mark.of(Piece.line(hook(), 1.8), Piece.filled(circle(0, 4, 1.2))));
    private static final SeverityShape HINT =
            new SeverityShape(
                    Mark.of(Piece.filled(circle(0, 0, 8))),
                    Mark.of(
                            Piece.filled(circle(0, -3.6, 1.3)),
                            Piece.filled(roundBox(-1.1, -1.2, 2.2, 5.8, 1))));

    /** The mark of a severity, around the origin; the diamond reaches 10 pixels each way. */
    public static SeverityShape of(Severity severity) {
        return switch (severity) {
            case ERROR -> ERROR;
            case DOUBT -> DOUBT;
            case HINT -> HINT;
        };
    }

    private static Path2D hook() {
        Path2D hook = new Path2D.Double();
        hook.moveTo(-2.5, -2.4);
        hook.curveTo(-2.5, -5.6, 2.5, -5.6, 2.5, -2.5);
        hook.curveTo(2.5, -0.6, 0, -0.6, 0, 1.8);
        return hook;
    }
}
