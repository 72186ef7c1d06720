package counterstep.toolchange;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Brings the best order and the bound together: first by narrow searches from both ends, then by
 * full ones, each with stronger bounds and more patience than the one before.
 */
final class WideningSearch {
    private static final int[] WIDTHS = {1, 16};

    /** A narrow search may cost one part in so many of what was spent. */
    private static final int SHARE = 2;

    private static final int NARROWEST = 8;

    /** Then memory rather than time would be what ends it. */
    private static final int MOST_STATES = 1_500_000;

    private final ToolGraph graph;
    private final BooleanSupplier stopped;
    private final Tables tables;
    private final Turns turns;
    private List<Integer> order;
    private int count;
    private int atLeast;

    WideningSearch(ToolGraph graph, BooleanSupplier stopped) {
        this.graph = graph;
        this.stopped = stopped;
        turns = new Turns(graph);
        tables = new Tables(graph, stopped);
    }

    void run() {
        GroupBounds none = GroupBounds.none(graph.tools());
        TurnSearch forward = search(turns, none);
        TurnSearch backward = search(new Turns(graph.reversed()), none);
        atLeast = forward.atLeast();
        first();
        for (int width : WIDTHS) {
            if (isOpen()) {
                improve(forward.narrow(count - 1, width), false);
            }
            if (isOpen()) {
                improve(backward.narrow(count - 1, width), true);
            }
        }
        full(forward, 200);
        staged(2, 4, 10_000, 2_000);
        boolean few = graph.tools() <= 6;
        staged(3, 6, 20_000, few ? MOST_STATES : 20_000);
        if (!few) {
            staged((graph.tools() + 1) / 2, 3, 100_000, MOST_STATES);
        }
    }

    private TurnSearch search(Turns from, GroupBounds bounds) {
        return new TurnSearch(from, new Rating(from.graph(), bounds), from.start(), stopped);
    }

    private boolean isOpen() {
        return count > atLeast && !stopped.getAsBoolean();
    }

    /** Always the first turn that may follow: some order, quickly, whatever stops the rest. */
    private void first() {
        Turn state = turns.start();
        while (!state.isEnd()) {
            state = turns.after(state).get(0);
        }
        order = state.order(graph);
        count = state.cost;
    }

    private void staged(int largest, int partitions, int mostSets, int patience) {
        if (isOpen()) {
            GroupBounds bounds = tables.bounds(largest, partitions, mostSets);
            full(search(turns, bounds), patience);
        }
    }

    private void full(TurnSearch search, int patience) {
        atLeast = Math.max(atLeast, search.atLeast());
        boolean complete = true;
        while (isOpen() && complete) {
            int width = Math.max(NARROWEST, search.followed() / SHARE / count);
            improve(search.narrow(count - 1, width), false);
            if (isOpen()) {
                TurnSearch.Found found =
                        search.within(atLeast, count - 1, patience - search.followed());
                improve(found.end(), false);
                complete = found.complete();
                atLeast += complete && found.end().isEmpty() ? 1 : 0;
            }
        }
    }

    private void improve(Optional<Turn> end, boolean reversed) {
        if (end.isPresent() && end.get().cost < count) {
            count = end.get().cost;
            order = end.get().order(reversed ? graph.reversed() : graph);
            if (reversed) {
                Collections.reverse(order);
            }
        }
    }

    List<Integer> order() {
        return order;
    }

    int count() {
        return count;
    }

    int atLeast() {
        return atLeast;
    }
}
