package counterstep.toolchange;

import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The fewest changes of a tool graph, an order that has them, and how many are needed at least.
 *
 * @param order the jobs
 * @param count changes of that order
 * @param atLeast no order has fewer; proved best when equal to the count
 */
record FewestTurns(List<Integer> order, int count, int atLeast) {
    /** Narrow searches from both ends for a first order, then wider and better bounded ones. */
    static FewestTurns of(ToolGraph graph, BooleanSupplier stopped) {
        Folding folding = Folding.of(graph);
        WideningSearch search = new WideningSearch(folding.graph(), stopped);
        search.run();
        return new FewestTurns(folding.unfolded(search.order()), search.count(), search.atLeast());
    }
}
