package counterstep.export.shape;

import counterstep.model.Phase;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * The left edge of a step, by which its phase is known without colour: hollow bar, bar, double bar,
 * squares, tick.
 */
public final class PhaseEdge {
    private static final double SQUARE = 4;
    private static final double PITCH = 7;

    private PhaseEdge() {}

    /**
     * The edge of a phase, from the origin down; 4 pixels wide (the double bar and the tick reach 1
     * and 2 further on either side).
     *
     * @param height in pixels at 100 %
     */
    public static Mark of(Phase phase, double height) {
        return switch (phase) {
            case PREPARE ->
                    Mark.of(Piece.line(Outline.roundBox(0.6, 0.6, 2.8, height - 1.2, 1.4), 1.2));
            case TEARDOWN -> Mark.of(Piece.filled(Outline.roundBox(0, 0, 4, height, 2)));
            case SERVICE ->
                    Mark.of(
                            Piece.filled(Outline.box(-1, 0, 2, height)),
                            Piece.filled(Outline.box(3, 0, 2, height)));
            case REASSEMBLY -> squares(height);
            case VERIFY -> Mark.of(Piece.line(tick(height / 2), 2));
        };
    }

    private static Mark squares(double height) {
        int count = Math.max(1, (int) ((height + PITCH - SQUARE) / PITCH));
        double start = (height - (count * PITCH - PITCH + SQUARE)) / 2;
        List<Piece> squares = new ArrayList<>();
        for (int square = 0; square < count; square++) {
            double y = start + square * PITCH;
            squares.add(Piece.filled(Outline.roundBox(0, y, SQUARE, SQUARE, 1)));
        }
        return new Mark(squares);
    }

    private static Shape tick(double middle) {
        return Outline.open(-2, middle, 1, middle + 4, 6, middle - 5);
    }
}
