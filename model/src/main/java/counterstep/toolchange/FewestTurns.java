package counterstep.toolchange;

import java.util.ArrayList;
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
    /** Part by part where the graph falls into parts, else at once. */
    static FewestTurns of(ToolGraph graph, BooleanSupplier stopped) {
        List<Part> parts = Part.of(graph, stopped);
        FewestTurns joined = joined(graph, parts);
        if (parts.size() == 1 || joined.isProved() || stopped.getAsBoolean()) {
            return joined;
        }
        FewestTurns uncut = new FoldedSearch(graph, joined.atLeast, stopped).finish();
        FewestTurns better = uncut.count < joined.count ? uncut : joined;
        return new FewestTurns(better.order, better.count, uncut.atLeast);
    }

    /**
     * The orders of the parts, one after the other. Where a part begins with the tool that the one
     * before leaves in hand a change is saved, and never more than one.
     */
    private static FewestTurns joined(ToolGraph graph, List<Part> parts) {
        List<Integer> order = new ArrayList<>();
        int atLeast = 0;
        for (Part part : parts) {
            atLeast += part.search().atLeast();
        }
        Part before = parts.get(0);
        order.addAll(before.order());
        for (Part part : parts.subList(1, parts.size())) {
            atLeast -= before.endings().first(part.beginnings()) < 0 ? 0 : 1;
            part.beginWith(before.hand());
            order.addAll(part.order());
            before = part;
        }
        return new FewestTurns(order, changes(graph, order), atLeast);
    }

    private static int changes(ToolGraph graph, List<Integer> order) {
        int changes = 0;
        int hand = -1;
        for (int job : order) {
            changes += graph.word(job).length - (graph.first(job) == hand ? 1 : 0);
            hand = graph.last(job);
        }
        return changes;
    }

    /** Whether no order has fewer changes than the one found. */
    boolean isProved() {
        return count == atLeast;
    }
}
