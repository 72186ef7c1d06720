package counterstep.toolchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where a graph falls into parts: all jobs of one come before all of the next, as teardown comes
 * before reassembly. Two parts meet in the tool in hand alone.
 */
final class Parts {
    private Parts() {}

    /** The jobs of each part, by number; a job alone goes with the part beside it. */
    static List<int[]> of(ToolGraph graph) {
        int[] order = byBefore(graph);
        boolean[] cut = cuts(graph, order);
        List<int[]> parts = new ArrayList<>();
        int from = 0;
        for (int at = 1; at < order.length; at++) {
            if (cut[at] && !isChain(cut, from, at) && !isChain(cut, at, order.length)) {
                parts.add(sorted(order, from, at));
                from = at;
            }
        }
        parts.add(sorted(order, from, order.length));
        return parts;
    }

    /**
     * Jobs in some allowed order: what comes before a job is less than what comes before a later.
     */
    private static int[] byBefore(ToolGraph graph) {
        List<List<Integer>> bySize = new ArrayList<>();
        for (int size = 0; size < graph.size(); size++) {
            bySize.add(new ArrayList<>());
        }
        for (int job = 0; job < graph.size(); job++) {
            bySize.get(graph.before(job).size()).add(job);
        }
        return bySize.stream().flatMap(List::stream).mapToInt(Integer::intValue).toArray();
    }

    /** Whether all before a place in the order come before all from there on. */
    private static boolean[] cuts(ToolGraph graph, int[] order) {
        boolean[] cut = new boolean[order.length];
        Places common = Places.below(graph.size());
        for (int job : order) {
            common.add(job);
        }
        for (int at = order.length - 1; at > 0; at--) {
            common.retainAll(graph.before(order[at]));
            cut[at] = common.size() == at;
        }
        return cut;
    }

    private static boolean isChain(boolean[] cut, int from, int until) {
        return IntStream.range(from + 1, until).allMatch(at -> cut[at]);
    }

    private static int[] sorted(int[] order, int from, int until) {
        return IntStream.range(from, until).map(at -> order[at]).sorted().toArray();
    }
}
