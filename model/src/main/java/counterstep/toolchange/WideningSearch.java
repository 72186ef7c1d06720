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

    private static final int FIRST_PATIENCE = 200;

    /**
     * Bounds, and how many states are followed with them.
     *
     * @param largest tools of a group at most, and no more than half of them
     * @param partitions how many ways to deal the tools
     * @param mostSets of one table
     * @param patience states followed
     */
    private record Stage(int largest, int partitions, int mostSets, int patience) {}

    private static final List<Stage> STAGES =
            List.of(
                    new Stage(2, 4, 10_000, 2_000),
                    new Stage(Integer.MAX_VALUE, 3, 100_000, MOST_STATES));

    private final ToolGraph graph;
    private final BooleanSupplier stopped;
    private final Turns turns;
    private final TurnSearch forward;
    private List<Integer> order;
    private int count;
    private int atLeast;

    /**
     * Looks for a first order.
     *
     * @param floor no order is known to have fewer changes; 0 where nothing is known
     */
    WideningSearch(ToolGraph graph, int floor, BooleanSupplier stopped) {
        this.graph = graph;
        this.stopped = stopped;
        turns = new Turns(graph);
        forward = search(turns, GroupBounds.none(graph.tools()));
        atLeast = Math.max(floor, forward.atLeast());
        first();
        if (isOpen()) {
            narrow();
        }
    }

    private void narrow() {
        TurnSearch backward = search(new Turns(graph.reversed()), GroupBounds.none(graph.tools()));
        for (int width : WIDTHS) {
            if (isOpen()) {
                improve(forward.narrow(count - 1, width), false);
            }
            if (isOpen()) {
                improve(backward.narrow(count - 1, width), true);
            }
        }
    }

    /** Goes on until the best is proved, its patience ends or it is stopped. */
    void finish() {
        full(forward, FIRST_PATIENCE);
        Tables tables = new Tables(graph, stopped);
        for (Stage stage : STAGES) {
            if (isOpen()) {
                full(search(turns, bounds(tables, stage)), stage.patience);
            }
        }
    }

    /** Of smaller groups where those asked for need too many sets. */
    private GroupBounds bounds(Tables tables, Stage stage) {
        int largest = Math.min(stage.largest, (graph.tools() + 1) / 2);
        GroupBounds bounds = tables.bounds(largest, stage.partitions, stage.mostSets);
        while (bounds.isNone() && largest > 2) {
            largest--;
            bounds = tables.bounds(largest, stage.partitions, stage.mostSets);
        }
        return bounds;
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
