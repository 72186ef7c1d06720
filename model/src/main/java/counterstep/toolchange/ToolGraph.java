package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Jobs in a partial order, each with the tools it takes up one after the other. A job of one tool
 * is free while that tool is in hand; one of several tools ends with its last in hand.
 */
final class ToolGraph {
    private final int tools;
    private final int[][] words;
    private final Places[] before;
    private final Places[] after;
    private final int[][] previous;
    private final int[][] next;
    private final Places[] justBefore;

    /**
     * @param tools how many there are
     * @param words the tools of each job in turn, at least one, no two like ones in succession
     * @param before all jobs that each must follow, not only the nearest
     */
    ToolGraph(int tools, int[][] words, Places[] before) {
        this.tools = tools;
        this.words = words;
        this.before = before;
        int size = words.length;
        after = new Places[size];
        for (int job = 0; job < size; job++) {
            after[job] = Places.below(size);
        }
        for (int job = 0; job < size; job++) {
            for (int one = before[job].next(0); one >= 0; one = before[job].next(one + 1)) {
                after[one].add(job);
            }
        }
        previous = nearest(before, after);
        next = nearest(after, before);
        justBefore = sets(previous);
    }

    private ToolGraph(ToolGraph turned, int[][] words) {
        this.tools = turned.tools;
        this.words = words;
        before = turned.after;
        after = turned.before;
        previous = turned.next;
        next = turned.previous;
        justBefore = sets(previous);
    }

    private static Places[] sets(int[][] near) {
        Places[] sets = new Places[near.length];
        for (int job = 0; job < near.length; job++) {
            sets[job] = Places.below(near.length);
            for (int one : near[job]) {
                sets[job].add(one);
            }
        }
        return sets;
    }

    /** Of all on one side, those with none between. */
    private static int[][] nearest(Places[] side, Places[] other) {
        int[][] near = new int[side.length][];
        for (int job = 0; job < side.length; job++) {
            List<Integer> found = new ArrayList<>();
            for (int one = side[job].next(0); one >= 0; one = side[job].next(one + 1)) {
                Places between = other[one].copy();
                between.retainAll(side[job]);
                if (between.next(0) < 0) {
                    found.add(one);
                }
            }
            near[job] = found.stream().mapToInt(Integer::intValue).toArray();
        }
        return near;
    }

    /** The same looked at from its end: as many changes, in the reverse of each order. */
    ToolGraph reversed() {
        int[][] turned = new int[words.length][];
        for (int job = 0; job < words.length; job++) {
            turned[job] = turned(words[job]);
        }
        return new ToolGraph(this, turned);
    }

    private static int[] turned(int[] word) {
        int[] turned = new int[word.length];
        for (int at = 0; at < word.length; at++) {
            turned[at] = word[word.length - 1 - at];
        }
        return turned;
    }

    /** The jobs that are kept, under new numbers in the same order. */
    ToolGraph only(int[] kept) {
        int[][] theirs = new int[kept.length][];
        Places[] theirBefore = new Places[kept.length];
        for (int job = 0; job < kept.length; job++) {
            theirs[job] = words[kept[job]];
            theirBefore[job] = Places.below(kept.length);
            for (int one = 0; one < kept.length; one++) {
                if (before[kept[job]].has(kept[one])) {
                    theirBefore[job].add(one);
                }
            }
        }
        return new ToolGraph(tools, theirs, theirBefore);
    }

    /** The same with one job more, the last by number, that comes before all. */
    ToolGraph behind(int tool) {
        int size = words.length;
        int[][] more = Arrays.copyOf(words, size + 1);
        more[size] = new int[] {tool};
        Places[] moreBefore = new Places[size + 1];
        for (int job = 0; job <= size; job++) {
            moreBefore[job] = Places.below(size + 1);
            if (job < size) {
                moreBefore[job].add(size);
                moreBefore[job].addAll(before[job]);
            }
        }
        return new ToolGraph(tools, more, moreBefore);
    }

    /** Whether it is another one looked at from its end, each job in the other's place. */
    boolean mirrors(ToolGraph other) {
        int last = size() - 1;
        if (last != other.size() - 1) {
            return false;
        }
        for (int job = 0; job <= last; job++) {
            if (!Arrays.equals(words[job], turned(other.words[last - job]))
                    || before[job].size() != other.after[last - job].size()) {
                return false;
            }
            for (int one = before[job].next(0); one >= 0; one = before[job].next(one + 1)) {
                if (!other.after[last - job].has(last - one)) {
                    return false;
                }
            }
        }
        return true;
    }

    int size() {
        return words.length;
    }

    int tools() {
        return tools;
    }

    int[] word(int job) {
        return words[job];
    }

    boolean single(int job) {
        return words[job].length == 1;
    }

    int first(int job) {
        return words[job][0];
    }

    int last(int job) {
        return words[job][words[job].length - 1];
    }

    /** All that must come before a job. */
    Places before(int job) {
        return before[job];
    }

    /** All that must come after a job. */
    Places after(int job) {
        return after[job];
    }

    /** Those directly before a job. */
    int[] previous(int job) {
        return previous[job];
    }

    /** The same as a set. */
    Places justBefore(int job) {
        return justBefore[job];
    }

    /** The jobs of one tool alone, by tool. */
    Places[] singles() {
        Places[] singles = new Places[tools];
        for (int tool = 0; tool < tools; tool++) {
            singles[tool] = Places.below(size());
        }
        for (int job = 0; job < size(); job++) {
            if (single(job)) {
                singles[first(job)].add(job);
            }
        }
        return singles;
    }

    /** Those directly after a job. */
    int[] next(int job) {
        return next[job];
    }
}
