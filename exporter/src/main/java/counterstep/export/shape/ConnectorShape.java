package counterstep.export.shape;

import static counterstep.export.shape.Outline.box;
import static counterstep.export.shape.Outline.circle;
import static counterstep.export.shape.Outline.roundBox;
import static counterstep.export.shape.Outline.segment;

import counterstep.model.ConnectorKind;
import java.awt.geom.Path2D;

/** Connectors as they open. */
public final class ConnectorShape {
    private ConnectorShape() {}

    /** The mark of a kind of connector. */
    public static Mark of(ConnectorKind kind) {
        return switch (kind) {
            case FLAT_CABLE ->
                    Mark.of(
                            Piece.line(roundBox(-8, -2, 16, 6, 1), 1.3),
                            Piece.line(segment(-8, -5, 8, -5), 1.8));
            case BOARD_TO_BOARD ->
                    Mark.of(
                            Piece.line(roundBox(-8, -4, 16, 3, 1), 1.2),
                            Piece.filled(roundBox(-8.5, 0.5, 17, 4, 1)));
            case COAX -> Mark.of(Piece.line(circle(0, 0, 6), 1.3), Piece.filled(circle(0, 0, 1.8)));
            case WIRE_TO_BOARD ->
                    Mark.of(
                            Piece.line(roundBox(-7, -5, 8, 10, 1), 1.3),
                            Piece.line(segment(1, -2, 8, -2), 1.3),
                            Piece.line(segment(1, 2, 8, 2), 1.3));
            case PLUG ->
                    Mark.of(
                            Piece.line(roundBox(-2, -5, 6, 10, 2), 1.3),
                            Piece.line(segment(-7.5, -2.5, -2, -2.5), 1.8),
                            Piece.line(segment(-7.5, 2.5, -2, 2.5), 1.8),
                            Piece.line(segment(4, 0, 8, 0), 1.8));
            case SPRING_CONTACT ->
                    Mark.of(Piece.line(leaf(), 1.5), Piece.filled(box(-6, 3.6, 12, 2)));
            case TERMINAL ->
                    Mark.of(
                            Piece.line(circle(-2.5, 0, 5), 1.3),
                            Piece.line(circle(-2.5, 0, 2), 1.3),
                            Piece.line(segment(2.5, 0, 8, 0), 2.2));
        };
    }

    /** A leaf spring that comes down onto a pad and turns up again. */
    private static Path2D leaf() {
        Path2D leaf = new Path2D.Double();
        leaf.moveTo(-7.5, -5);
        leaf.lineTo(-4, -5);
        leaf.curveTo(0.5, -5, -1, 2.8, 1.5, 2.8);
        leaf.quadTo(3.5, 2.8, 5, -0.5);
        return leaf;
    }
}
