package counterstep.toolchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** The tables of a graph's groups of tools, made when they are wanted. */
final class Tables {
    /** Beyond it there are too many ways to deal the tools. */
    private static final int MOST_TOOLS = 12;

    private final ToolGraph graph;
    private final ToolGraph fromEnd;
    private final BooleanSupplier stopped;
    private final Map<Integer, GroupTable> made = new HashMap<>();

    Tables(ToolGraph graph, BooleanSupplier stopped) {
        this.graph = graph;
        this.stopped = stopped;
        fromEnd = graph.reversed();
    }

    /**
     * Bounds by groups.
     *
     * @param largest tools of a group at most
     * @param partitions how many ways to deal the tools
     * @param most sets of one table; a partition that needs a larger one is left out
     */
    GroupBounds bounds(int largest, int partitions, int most) {
        if (graph.tools() > MOST_TOOLS) {
            return GroupBounds.none(graph.tools());
        }
        List<List<GroupTable>> whole = new ArrayList<>();
        for (Partition partition : Partition.best(worth(largest), largest, partitions)) {
            List<GroupTable> tables = new ArrayList<>();
            for (int group : partition.groups()) {
                tables.add(table(group, most));
            }
            if (tables.stream().allMatch(GroupTable::isWhole)) {
                whole.add(tables);
            }
        }
        return GroupBounds.of(graph.tools(), whole);
    }

    private GroupTable table(int group, int most) {
        return made.computeIfAbsent(group, it -> new GroupTable(fromEnd, it, most, stopped));
    }

    /**
     * What a group's table will say at least, by those of its pairs: each turn is counted in all
     * pairs that its tool is in.
     */
    private int[] worth(int largest) {
        int[] worth = new int[1 << graph.tools()];
        for (int group = 1; group < worth.length; group++) {
            int size = Integer.bitCount(group);
            if (size == 1 || size == 2) {
                GroupTable table = table(group, Integer.MAX_VALUE);
                worth[group] = table.isWhole() ? table.atLeast() : 0;
            } else if (size <= largest) {
                int sum = 0;
                for (int pair = 1; pair < group; pair++) {
                    if (Integer.bitCount(pair) == 2 && (pair & group) == pair) {
                        sum += worth[pair];
                    }
                }
                worth[group] = (sum + size - 2) / (size - 1);
            }
        }
        return worth;
    }
}
