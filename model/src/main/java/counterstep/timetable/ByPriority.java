package counterstep.timetable;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Serial schedule generation: of the activities whose predecessors have their place, the one of
 * least priority number gets the first place where it fits, also before others (Kelley 1963, from
 * memory). Only for projects where tools do not matter.
 */
final class ByPriority {
    private final Board board;
    private final long[] priority;
    private final int[] starts;
    private final BitSet placed = new BitSet();
    private Open all = Open.NONE;

    private ByPriority(Board board, long[] priority) {
        this.board = board;
        this.priority = priority;
        starts = new int[board.size];
        for (int count = 0; count < board.size; count++) {
            place(next());
        }
    }

    /** When each activity starts. */
    static int[] starts(Board board, long[] priority) {
        return new ByPriority(board, priority).starts;
    }

    private int next() {
        int best = Board.NONE;
        for (int activity = 0; activity < board.size; activity++) {
            if (!placed.get(activity)
                    && (best == Board.NONE || priority[activity] < priority[best])
                    && Arrays.stream(board.before[activity]).allMatch(placed::get)) {
                best = activity;
            }
        }
        return best;
    }

    private void place(int activity) {
        int earliest = all.over(board, board.before[activity], 0);
        starts[activity] = all.fits(board, activity, earliest);
        placed.set(activity);
        all = all.with(board, activity, starts[activity], 0);
    }
}
