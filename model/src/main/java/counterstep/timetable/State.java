package counterstep.timetable;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The beginning of a timetable: what has been started, the last of it now. Nothing else starts
 * before now. Of what is over nothing has to be remembered but that it is.
 *
 * @param done what has been started
 * @param last when the last of it started
 * @param open what is under way
 * @param people who is free when
 * @param trail how it came about; empty at the start
 * @param bound no timetable that goes on from here ends before this
 */
record State(BitSet done, int last, Open open, People people, Optional<Trail> trail, int bound) {
    static State empty(Board board) {
        return new State(new BitSet(), 0, Open.NONE, People.of(board), Optional.empty(), 0);
    }

    State after(Board board, int activity, int start, List<Integer> chosen) {
        BitSet more = (BitSet) done.clone();
        more.set(activity);
        List<Integer> who = people.numbers(chosen);
        return new State(
                more,
                start,
                open.with(board, activity, start),
                people.with(board, activity, start, chosen),
                Optional.of(new Trail(trail, activity, start, who)),
                bound);
    }

    State bounded(int better) {
        return new State(done, last, open, people, trail, Math.max(bound, better));
    }

    /** Whether all that can follow another state with as much done can follow this one as soon. */
    boolean noWorse(Board board, State other) {
        return last <= other.last
                && open.noWorse(board, other.open, other.last)
                && people.noWorse(board, other.people, other.last);
    }

    boolean ready(Board board, int activity) {
        if (done.get(activity)) {
            return false;
        }
        for (int earlier : board.before[activity]) {
            if (!done.get(earlier)) {
                return false;
            }
        }
        return true;
    }

    /** Time that people will spend on taking up tools, at least. */
    long changesToCome(Board board) {
        return (long) board.change * (board.people == 1 ? alongChains(board) : unheld(board));
    }

    private int alongChains(Board board) {
        int most = 0;
        for (int activity = 0; activity < board.size; activity++) {
            if (ready(board, activity)) {
                most = Math.max(most, board.chains.from(activity, people.inHand()));
            }
        }
        BitSet left = (BitSet) done.clone();
        left.flip(0, board.size);
        return Math.max(
                Math.max(unheld(board), board.fewestChanges - people.changes()),
                board.chains.between(most, left));
    }

    /** Tools still to be used that nobody has in hand, or will have from within other work. */
    private int unheld(Board board) {
        BitSet tools = new BitSet();
        BitSet within = new BitSet();
        for (int activity = 0; activity < board.size; activity++) {
            if (!done.get(activity) && board.first[activity] != Board.NONE) {
                tools.set(board.first[activity]);
                if (board.first[activity] != board.last[activity]) {
                    within.set(board.last[activity]);
                }
            }
        }
        tools.andNot(within);
        people.leaveOutHeld(tools);
        return tools.cardinality();
    }
}
