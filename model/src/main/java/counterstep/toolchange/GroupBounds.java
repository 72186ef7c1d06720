package counterstep.toolchange;

import java.util.ArrayList;
import java.util.List;

/**
 * What is still to come at least, by the tables of several partitions of the tools into groups: in
 * a partition the turns add up, since each turn has one tool, and the partition of the greatest sum
 * counts.
 */
final class GroupBounds {
    private final List<GroupTable> tables = new ArrayList<>();

    /** By partition: its tables. */
    private final List<int[]> partitions = new ArrayList<>();

    /** By tool: the tables that count it. */
    private final int[][] counting;

    private GroupBounds(int tools) {
        counting = new int[tools][0];
    }

    /**
     * @param tools how many
     * @param partitions the tables of each; the same table may be in several
     */
    static GroupBounds of(int tools, List<List<GroupTable>> partitions) {
        GroupBounds bounds = new GroupBounds(tools);
        for (List<GroupTable> partition : partitions) {
            bounds.add(partition);
        }
        for (int tool = 0; tool < tools; tool++) {
            bounds.counting[tool] = bounds.tablesOf(tool);
        }
        return bounds;
    }

    /** No bound at all. */
    static GroupBounds none(int tools) {
        return of(tools, List.of());
    }

    private void add(List<GroupTable> partition) {
        for (GroupTable table : partition) {
            if (!tables.contains(table)) {
                tables.add(table);
            }
        }
        partitions.add(partition.stream().mapToInt(tables::indexOf).toArray());
    }

    private int[] tablesOf(int tool) {
        List<Integer> found = new ArrayList<>();
        for (int table = 0; table < tables.size(); table++) {
            if (tables.get(table).counts(tool)) {
                found.add(table);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    boolean isNone() {
        return partitions.isEmpty();
    }

    /** Turns still to come, by table. */
    short[] at(Turn state) {
        short[] left = new short[tables.size()];
        for (int table = 0; table < left.length; table++) {
            left[table] = (short) tables.get(table).atLeast(state.work.open());
        }
        return left;
    }

    /**
     * The same one turn later: in a table one turn fewer at most, and in those alone that count the
     * tool now in hand.
     */
    short[] after(short[] before, Turn state) {
        short[] left = before.clone();
        for (int table : counting[state.hand]) {
            if (tables.get(table).isEnough(left[table] - 1, state.work.open())) {
                left[table]--;
            }
        }
        return left;
    }

    /** The greatest sum of a partition. */
    int sum(short[] left) {
        int greatest = 0;
        for (int[] partition : partitions) {
            int sum = 0;
            for (int table : partition) {
                sum += left[table];
            }
            greatest = Math.max(greatest, sum);
        }
        return greatest;
    }
}
