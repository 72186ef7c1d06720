package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A state of the work: how far it is, with which tool in hand, after how many changes; and the turn
 * that led to it.
 */
final class Turn {
    final Progress work;
    final int hand;
    final int cost;
    private final Turn from;

    /** The job of several tools that the turn began with; -1 for none. */
    private final int run;

    Turn(Progress work, int hand, int cost, Turn from, int run) {
        this.work = work;
        this.hand = hand;
        this.cost = cost;
        this.from = from;
        this.run = run;
    }

    boolean isEnd() {
        return work.isEnd();
    }

    /** The jobs from the beginning to here, in order. */
    List<Integer> order(ToolGraph graph) {
        List<Turn> turns = new ArrayList<>();
        for (Turn at = this; at.from != null; at = at.from) {
            turns.add(0, at);
        }
        List<Integer> order = new ArrayList<>();
        for (Turn turn : turns) {
            order.addAll(turn.jobs(graph));
        }
        return order;
    }

    /** What the turn does: that what comes before a job is less than what comes before its next. */
    private List<Integer> jobs(ToolGraph graph) {
        Places taken = work.done().copy();
        taken.removeAll(from.work.done());
        List<Integer> jobs = new ArrayList<>();
        for (int job = taken.next(0); job >= 0; job = taken.next(job + 1)) {
            jobs.add(job);
        }
        jobs.sort(
                Comparator.comparing((Integer job) -> job != run)
                        .thenComparing(job -> graph.before(job).size()));
        return jobs;
    }
}
