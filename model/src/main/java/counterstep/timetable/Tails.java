package counterstep.timetable;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * How long the rest takes at least once an activity is over: along one chain of what comes after
 * it, or by the work of all that comes after it on each resource. The work of any of them must be
 * done before the shortest of their own tails begins.
 */
final class Tails {
    private final Board board;

    Tails(Board board) {
        this.board = board;
    }

    void fill() {
        for (int at = board.size - 1; at >= 0; at--) {
            int activity = board.sequence.get(at);
            long tail = 0;
            for (int later : board.next[activity]) {
                tail = Math.max(tail, (long) board.duration[later] + board.tail[later]);
            }
            for (Limit limit : board.limits) {
                tail = Math.max(tail, byWork(limit, activity));
            }
            board.tail[activity] = (int) tail;
        }
    }

    private long byWork(Limit limit, int activity) {
        BitSet after = board.after[activity];
        List<Limit.Work> works = new ArrayList<>();
        for (Limit.Work work : limit.works()) {
            if (after.get(work.activity())) {
                works.add(work);
            }
        }
        if (works.isEmpty()) {
            return 0;
        }
        works.sort(Comparator.comparingInt(this::left).reversed());
        long energy = 0;
        long most = 0;
        for (Limit.Work work : works) {
            energy += (long) work.amount() * work.length();
            most = Math.max(most, ceiling(energy, limit) + left(work));
        }
        if (limit.isHands()) {
            energy += changes(activity);
            most = Math.max(most, ceiling(energy, limit) + left(works.get(works.size() - 1)));
        }
        return most;
    }

    /** Time for tools; the first may be taken up while the activity waits. */
    private long changes(int activity) {
        ToolChains chains = board.chains;
        int changes = chains.between(chains.after(activity), board.after[activity]);
        int wait = board.duration[activity] - board.handsFor[activity];
        return Math.max(0, (long) board.change * changes - Math.min(board.change, wait));
    }

    private static long ceiling(long energy, Limit limit) {
        return (energy + limit.capacity() - 1) / limit.capacity();
    }

    /** What is left when a piece of work is done. */
    private int left(Limit.Work work) {
        return work.rest() + board.tail[work.activity()];
    }
}
