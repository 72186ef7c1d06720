package counterstep.toolchange;

import java.util.function.BooleanSupplier;

/** A search on what folding leaves of a graph; orders are of the graph itself. */
final class FoldedSearch {
    private final Folding folding;
    private final WideningSearch search;

    /**
     * Looks quickly; {@link #finish} goes on.
     *
     * @param floor no order is known to have fewer changes; 0 where nothing is known
     */
    FoldedSearch(ToolGraph graph, int floor, BooleanSupplier stopped) {
        folding = Folding.of(graph);
        search = new WideningSearch(folding.graph(), floor, stopped);
    }

    /** Looks until the best is proved, its patience ends or it is stopped. */
    FewestTurns finish() {
        search.finish();
        return new FewestTurns(folding.unfolded(search.order()), search.count(), search.atLeast());
    }
}
