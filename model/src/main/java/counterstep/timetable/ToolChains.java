package counterstep.timetable;

import java.util.BitSet;

/**
 * How many tools a single person takes up along one chain of activities at least, those within the
 * activities too: other work in between may bring a tool, but only by taking it up. With more
 * people a chain forces none: each may hold a tool of their own.
 */
final class ToolChains {
    private final Board board;
    private final int tools;
    private final int[][] changes;

    ToolChains(Board board) {
        this.board = board;
        int most = 0;
        for (int activity = 0; activity < board.size; activity++) {
            most = Math.max(most, 1 + Math.max(board.first[activity], board.last[activity]));
        }
        tools = most;
        changes = new int[board.size][];
        for (int at = board.size - 1; at >= 0 && board.people == 1; at--) {
            int activity = board.sequence.get(at);
            changes[activity] = new int[tools + 1];
            for (int held = 0; held <= tools; held++) {
                changes[activity][held] = counted(activity, held);
            }
        }
    }

    private int counted(int activity, int held) {
        boolean bare = board.first[activity] == Board.NONE;
        int here = board.within[activity] + (bare || held == board.first[activity] ? 0 : 1);
        return here + afterwards(activity, bare ? held : board.last[activity]);
    }

    private int afterwards(int activity, int held) {
        int most = 0;
        for (int later : board.next[activity]) {
            most = Math.max(most, changes[later][held]);
        }
        return most;
    }

    /** Changes from an activity on, with a tool in hand before it. */
    int from(int activity, int held) {
        return board.people == 1 ? changes[activity][held == Board.NONE ? tools : held] : 0;
    }

    /** Changes after an activity is over, whatever came before it. */
    int after(int activity) {
        if (board.people != 1) {
            return 0;
        }
        if (board.last[activity] != Board.NONE) {
            return afterwards(activity, board.last[activity]);
        }
        int least = Integer.MAX_VALUE;
        for (int held = 0; held <= tools; held++) {
            least = Math.min(least, afterwards(activity, held));
        }
        return least;
    }

    /** Of so many changes those that lie between activities and not within some of these. */
    int between(int changes, BitSet activities) {
        int within = 0;
        for (int one = activities.nextSetBit(0); one >= 0; one = activities.nextSetBit(one + 1)) {
            within += board.within[one];
        }
        return Math.max(0, changes - within);
    }
}
