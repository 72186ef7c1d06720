package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Tools dealt into groups, each a bit set of tools, so that the bounds of the groups add up. */
final class Partition {
    /** So that a little more worth outweighs any number of uses. */
    private static final int WEIGHT = 64;

    /**
     * So that fewer groups outweigh any worth, which for a large group is only what its pairs say.
     */
    private static final int GROUP = 1 << 20;

    private final int[] groups;

    private Partition(int[] groups) {
        this.groups = groups;
    }

    /** The groups: no tool is in two of them. */
    int[] groups() {
        return groups.clone();
    }

    /**
     * Ways to deal the tools into few groups so that the sum is great. Each next one takes other
     * groups where that costs nothing.
     *
     * @param worth by group; negative where it must not be used
     * @param largest tools of a group at most
     * @param wanted how many ways at most
     */
    static List<Partition> best(int[] worth, int largest, int wanted) {
        int[] uses = new int[worth.length];
        List<Partition> found = new ArrayList<>();
        while (found.size() < wanted) {
            int[] groups = dealt(worth, uses, largest);
            boolean fresh = false;
            for (int group : groups) {
                fresh |= uses[group]++ == 0;
            }
            if (!fresh) {
                return found;
            }
            found.add(new Partition(groups));
        }
        return found;
    }

    /** The best of all ways to deal, from the best ways to deal fewer tools. */
    private static int[] dealt(int[] worth, int[] uses, int largest) {
        int[] best = new int[worth.length];
        int[] last = new int[worth.length];
        Arrays.fill(best, Integer.MIN_VALUE / 2);
        best[0] = 0;
        for (int set = 1; set < best.length; set++) {
            int lowest = set & -set;
            for (int group = set; group > 0; group = (group - 1) & set) {
                boolean may = worth[group] >= 0 && Integer.bitCount(group) <= largest;
                if ((group & lowest) != 0 && may) {
                    int gain = WEIGHT * worth[group] - uses[group] - GROUP;
                    int sum = best[set ^ group] + gain;
                    if (sum > best[set]) {
                        best[set] = sum;
                        last[set] = group;
                    }
                }
            }
        }
        List<Integer> groups = new ArrayList<>();
        for (int set = best.length - 1; set > 0; set ^= last[set]) {
            groups.add(last[set]);
        }
        return groups.stream().mapToInt(Integer::intValue).toArray();
    }
}
