package counterstep.toolchange;

import java.util.ArrayList;
import java.util.List;

/**
 * The turns that may follow a state. With a tool in hand everything it can do is done at once: that
 * is never worse, since such a job costs nothing now, and leaving it out later costs nothing
 * either.
 */
final class Turns {
    private final ToolGraph graph;
    private final ForcedTurn forced;
    private final Places[] singles;
    private final Places[] beginnings;
    private final Places runs;

    Turns(ToolGraph graph) {
        this.graph = graph;
        this.forced = new ForcedTurn(graph);
        singles = graph.singles();
        beginnings = new Places[graph.tools()];
        for (int tool = 0; tool < beginnings.length; tool++) {
            beginnings[tool] = singles[tool].copy();
        }
        runs = Places.below(graph.size());
        for (int job = 0; job < graph.size(); job++) {
            if (!graph.single(job)) {
                runs.add(job);
                beginnings[graph.first(job)].add(job);
            }
        }
    }

    ToolGraph graph() {
        return graph;
    }

    /** Nothing done, no tool in hand. */
    Turn start() {
        return at(Places.below(graph.size()), -1);
    }

    /** Some jobs done, all that come before them too, and all done that the tool in hand can do. */
    Turn at(Places done, int hand) {
        Turn bare = new Turn(Progress.of(graph, done), hand, 0, null, -1);
        return hand < 0 ? bare : pickUp(bare, hand, 0);
    }

    /** The states one turn later; one alone where it is known to be as good as any. */
    List<Turn> after(Turn state) {
        List<Turn> found = new ArrayList<>();
        Places open = state.work.open();
        for (int job = open.first(runs); job >= 0; job = open.next(job + 1)) {
            if (!graph.single(job) && graph.first(job) == state.hand) {
                found.add(run(state, job));
            }
        }
        boolean mayForce = !forced.goesOnWith(state.hand, state.work.done());
        for (int tool = 0; tool < graph.tools(); tool++) {
            if (tool != state.hand && open.first(beginnings[tool]) >= 0) {
                Turn next = pickUp(state, tool, 1);
                if (mayForce && forced.isForced(state.work.done(), next.work.done(), tool)) {
                    return List.of(next);
                }
                found.add(next);
            }
        }
        return found;
    }

    private Turn pickUp(Turn from, int tool, int cost) {
        Progress work = from.work.copy();
        work.takeAll(singles[tool]);
        return new Turn(work, tool, from.cost + cost, from, -1);
    }

    /** A job of several tools, the first of them in hand, then all that its last one can do. */
    private Turn run(Turn from, int job) {
        Progress work = from.work.copy();
        work.take(job);
        work.takeAll(singles[graph.last(job)]);
        return new Turn(work, graph.last(job), from.cost + graph.word(job).length - 1, from, job);
    }

    /** Whether a job of several tools is still to come that goes on with the tool in hand. */
    boolean needsItsHand(Turn state) {
        return forced.goesOnWith(state.hand, state.work.done());
    }
}
