package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The turns that may follow a state. With a tool in hand everything it can do is done at once: that
 * is never worse, since such a job costs nothing now, and leaving it out later costs nothing
 * either.
 */
final class Turns {
    private final ToolGraph graph;
    private final ForcedTurn forced;

    /** Room for one turn being worked out. */
    private final int[] open;

    private final int[] jobs;

    private int taken;

    Turns(ToolGraph graph) {
        this.graph = graph;
        this.forced = new ForcedTurn(graph);
        open = new int[graph.size()];
        jobs = new int[graph.size()];
    }

    /** Nothing done, no tool in hand. */
    Turn start() {
        return at(Places.below(graph.size()), -1);
    }

    /** Some jobs done, all that come before them too, and all done that the tool in hand can do. */
    Turn at(Places done, int hand) {
        int count = 0;
        for (int job = 0; job < graph.size(); job++) {
            if (!done.has(job) && done.hasAll(graph.before(job))) {
                open[count++] = job;
            }
        }
        Turn bare = new Turn(done, hand, 0, Arrays.copyOf(open, count), null, new int[0]);
        return hand < 0 ? bare : turn(bare, hand, -1, 0);
    }

    /** The states one turn later; one alone where it is known to be as good as any. */
    List<Turn> after(Turn state) {
        List<Turn> found = new ArrayList<>();
        for (int job : state.open) {
            if (!graph.single(job) && graph.first(job) == state.hand) {
                found.add(turn(state, graph.last(job), job, graph.word(job).length - 1));
            }
        }
        boolean mayForce = !forced.goesOnWith(state.hand, state.done);
        for (int tool = 0; tool < graph.tools(); tool++) {
            if (tool != state.hand && isOpen(state, tool)) {
                Turn next = turn(state, tool, -1, 1);
                if (mayForce && forced.isForced(next.done, jobs, taken, tool)) {
                    return List.of(next);
                }
                found.add(next);
            }
        }
        return found;
    }

    private boolean isOpen(Turn state, int tool) {
        for (int job : state.open) {
            if (graph.first(job) == tool) {
                return true;
            }
        }
        return false;
    }

    /** A job of several tools, -1 for none, then all that the tool can do. */
    private Turn turn(Turn from, int tool, int run, int cost) {
        Places done = from.done.copy();
        int count = from.open.length;
        System.arraycopy(from.open, 0, open, 0, count);
        taken = 0;
        if (run >= 0) {
            int at = 0;
            while (open[at] != run) {
                at++;
            }
            open[at] = open[--count];
            count = take(run, done, count);
        }
        for (int at = 0; at < count; ) {
            int job = open[at];
            if (graph.single(job) && graph.first(job) == tool) {
                open[at] = open[--count];
                count = take(job, done, count);
            } else {
                at++;
            }
        }
        return new Turn(
                done,
                tool,
                from.cost + cost,
                Arrays.copyOf(open, count),
                from,
                Arrays.copyOf(jobs, taken));
    }

    /** Does a job, and opens what then is allowed; answers how many are open. */
    private int take(int job, Places done, int before) {
        jobs[taken++] = job;
        done.add(job);
        int count = before;
        for (int next : graph.next(job)) {
            boolean allowed = true;
            for (int previous : graph.previous(next)) {
                allowed &= done.has(previous);
            }
            if (allowed) {
                open[count++] = next;
            }
        }
        return count;
    }

    /** Whether a job of several tools is still to come that goes on with the tool in hand. */
    boolean needsItsHand(Turn state) {
        return forced.goesOnWith(state.hand, state.done);
    }
}
