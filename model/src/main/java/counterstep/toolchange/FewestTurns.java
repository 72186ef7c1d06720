package counterstep.toolchange;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The fewest changes of a tool graph, an order that has them, and how many are needed at least.
 *
 * @param order the jobs
 * @param count changes of that order
 * @param atLeast no order has fewer; proved best when equal to the count
 */
record FewestTurns(List<Integer> order, int count, int atLeast) {
    private static final int[] WIDTHS = {1, 8, 64};
    private static final int WIDEST = 64;

    /** Narrow searches from both ends for a first order, then a full one for a better one. */
    static FewestTurns of(ToolGraph graph, BooleanSupplier stopped) {
        Folding folding = Folding.of(graph);
        ToolGraph folded = folding.graph();
        TurnSearch forward = new TurnSearch(folded, stopped);
        TurnSearch backward = new TurnSearch(folded.reversed(), stopped);
        int atLeast = forward.atLeast(forward.turns().start());
        FewestTurns best = first(forward);
        for (int width : WIDTHS) {
            if (best.count > atLeast && !stopped.getAsBoolean()) {
                best = best.orBetter(forward, width, false).orBetter(backward, width, true);
            }
        }
        int proved = atLeast;
        if (best.count > atLeast) {
            List<GroupBound> groups = Partition.pairs(folded, WIDEST);
            forward.boundBy(groups);
            proved = forward.atLeast(forward.turns().start());
        }
        if (best.count > proved) {
            TurnSearch.Found found =
                    forward.within(forward.turns().start(), best.count - 1, Integer.MAX_VALUE);
            best = found.end().map(end -> of(end, false)).orElse(best);
            proved = found.complete() ? best.count : proved;
        }
        return new FewestTurns(folding.unfolded(best.order), best.count, proved);
    }

    /** Always the first turn that may follow: some order, quickly, whatever stops the rest. */
    private static FewestTurns first(TurnSearch search) {
        Turn state = search.turns().start();
        while (!state.isEnd()) {
            state = search.turns().after(state).get(0);
        }
        return of(state, false);
    }

    private static FewestTurns of(Turn end, boolean reversed) {
        List<Integer> order = end.order();
        if (reversed) {
            Collections.reverse(order);
        }
        return new FewestTurns(order, end.cost, 0);
    }

    private FewestTurns orBetter(TurnSearch search, int width, boolean reversed) {
        Optional<Turn> end = search.within(search.turns().start(), count - 1, width).end();
        return end.map(turn -> of(turn, reversed)).orElse(this);
    }
}
