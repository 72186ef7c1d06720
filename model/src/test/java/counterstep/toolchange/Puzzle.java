package counterstep.toolchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.GroupRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Steps, links and groups as plain numbers, for references that share no code with the planner.
 *
 * @param tools how many there are
 * @param words the tools of each step in turn, no two like ones in succession; none for bare hands
 * @param links pairs: the first before the second, which has the greater number
 * @param groups steps that stay in company, no step in two of them
 */
record Puzzle(int tools, List<int[]> words, List<int[]> links, List<Company> groups) {
    /**
     * A group.
     *
     * @param rule in any order or in the order given
     * @param steps at least two
     */
    record Company(GroupRule rule, List<Integer> steps) {}

    /** A graph of the planner's read back: only the direct links, without groups. */
    static Puzzle of(ToolGraph graph) {
        BitSet[] before = new BitSet[graph.size()];
        List<int[]> links = new ArrayList<>();
        for (int later = 0; later < graph.size(); later++) {
            before[later] = new BitSet();
            for (int earlier = 0; earlier < graph.size(); earlier++) {
                before[later].set(earlier, graph.before(later).has(earlier));
            }
        }
        for (int later = 0; later < graph.size(); later++) {
            BitSet direct = (BitSet) before[later].clone();
            before[later].stream().forEach(middle -> direct.andNot(before[middle]));
            for (int earlier : direct.stream().toArray()) {
                links.add(new int[] {earlier, later});
            }
        }
        List<int[]> words = IntStream.range(0, graph.size()).mapToObj(graph::word).toList();
        return new Puzzle(graph.tools(), words, links, List.of());
    }

    /** The planner's graph of it, which knows neither groups nor bare hands. */
    ToolGraph graph() {
        Places[] before = new Places[size()];
        Arrays.setAll(before, job -> Places.below(size()));
        for (int later = 0; later < size(); later++) {
            for (int[] link : links) {
                if (link[1] == later) {
                    before[later].add(link[0]);
                    before[later].addAll(before[link[0]]);
                }
            }
        }
        return new ToolGraph(tools, words.toArray(int[][]::new), before);
    }

    int size() {
        return words.size();
    }

    /** Which group each step is in; -1 for none. */
    int[] groupOf() {
        int[] groupOf = new int[size()];
        Arrays.fill(groupOf, -1);
        for (int group = 0; group < groups.size(); group++) {
            for (int step : groups.get(group).steps()) {
                groupOf[step] = group;
            }
        }
        return groupOf;
    }

    /** Whether the links let each group be done as a whole: seen as one, they are in no loop. */
    boolean isPossible() {
        int[] unit = groupOf();
        for (int step = 0; step < size(); step++) {
            unit[step] = unit[step] < 0 ? groups.size() + step : unit[step];
        }
        List<int[]> left = new ArrayList<>();
        for (int[] link : links) {
            if (unit[link[0]] != unit[link[1]]) {
                left.add(new int[] {unit[link[0]], unit[link[1]]});
            }
        }
        int before = -1;
        while (before != left.size()) {
            before = left.size();
            BitSet later = new BitSet();
            left.forEach(link -> later.set(link[1]));
            left.removeIf(link -> !later.get(link[0]));
        }
        return left.isEmpty();
    }

    /** The changes of an order, which must have each step once, keep the links and the groups. */
    int recounted(List<Integer> order) {
        assertEquals(IntStream.range(0, size()).boxed().toList(), order.stream().sorted().toList());
        for (int[] link : links) {
            assertTrue(order.indexOf(link[0]) < order.indexOf(link[1]), "a link is kept");
        }
        for (Company group : groups) {
            int[] at = group.steps().stream().mapToInt(order::indexOf).toArray();
            int[] sorted = Arrays.stream(at).sorted().toArray();
            assertEquals(at.length - 1, sorted[at.length - 1] - sorted[0], "in company");
            assertTrue(group.rule() == GroupRule.TOGETHER || Arrays.equals(at, sorted), "in order");
        }
        int changes = 0;
        int held = -1;
        for (int step : order) {
            for (int tool : words.get(step)) {
                changes += tool == held ? 0 : 1;
                held = tool;
            }
        }
        return changes;
    }
}
