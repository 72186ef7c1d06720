package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Tools dealt into small groups so that their bounds add up to much. */
final class Partition {
    private static final int MOST_TOOLS = 14;
    private static final int NARROW = 4;

    private Partition() {}

    /** Bounds of pairs, and one of three where the number of tools is odd. */
    static List<GroupBound> pairs(ToolGraph graph, int widest) {
        int tools = graph.tools();
        if (tools > MOST_TOOLS) {
            return List.of();
        }
        int[][] worth = new int[tools][tools];
        for (int one = 0; one < tools; one++) {
            for (int other = one; other < tools; other++) {
                int[] group = one == other ? new int[] {one} : new int[] {one, other};
                int bound = new GroupBound(graph, group, NARROW).atLeast();
                worth[one][other] = bound;
                worth[other][one] = bound;
            }
        }
        List<GroupBound> bounds = new ArrayList<>();
        for (int[] group : dealt(worth)) {
            bounds.add(new GroupBound(graph, group, widest));
        }
        return bounds;
    }

    /** The best of all ways to deal, by the worth of what is dealt already. */
    private static List<int[]> dealt(int[][] worth) {
        int tools = worth.length;
        int[] best = new int[1 << tools];
        int[] partner = new int[1 << tools];
        Arrays.fill(best, -1);
        best[0] = 0;
        for (int set = 1; set < best.length; set++) {
            int one = Integer.numberOfTrailingZeros(set);
            for (int other = one; other < tools; other++) {
                if ((set >> other & 1) != 0) {
                    int rest = set & ~(1 << one) & ~(1 << other);
                    int sum = best[rest] + worth[one][other];
                    if (sum > best[set]) {
                        best[set] = sum;
                        partner[set] = other;
                    }
                }
            }
        }
        List<int[]> groups = new ArrayList<>();
        for (int set = best.length - 1; set > 0; ) {
            int one = Integer.numberOfTrailingZeros(set);
            int other = partner[set];
            groups.add(one == other ? new int[] {one} : new int[] {one, other});
            set &= ~(1 << one) & ~(1 << other);
        }
        return groups;
    }
}
