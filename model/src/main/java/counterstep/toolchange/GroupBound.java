package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How many turns of a few tools are still to come at least, when turns of all others cost nothing
 * but still put the tool down. Solved from the end: for each number of turns the largest sets of
 * jobs that can be finished with so many. Where these become too many, two are replaced by all that
 * either holds, which keeps the bound true and makes it weaker.
 */
final class GroupBound {
    private final ToolGraph fromEnd;
    private final boolean[] counted;
    private final int widest;

    /** By number of turns: sets that can be finished in so many; the last one holds all. */
    private final List<List<Places>> finished = new ArrayList<>();

    private final int[] open;

    /**
     * @param graph looked at from its beginning
     * @param group the tools whose turns are counted
     * @param widest how many sets are kept for one number of turns
     */
    GroupBound(ToolGraph graph, int[] group, int widest) {
        this.fromEnd = graph.reversed();
        this.widest = widest;
        counted = new boolean[graph.tools()];
        for (int tool : group) {
            counted[tool] = true;
        }
        open = new int[graph.size()];
        List<List<Places>> layers = new ArrayList<>();
        layers.add(new ArrayList<>(List.of(closed(Places.below(graph.size()), -1))));
        for (int cost = 0; cost < layers.size(); cost++) {
            List<Places> kept = widestFew(layers.get(cost));
            finished.add(kept);
            if (kept.get(0).size() == graph.size()) {
                return;
            }
            for (Places set : kept) {
                for (int tool : group) {
                    put(layers, cost + 1, closed(set, tool));
                }
            }
        }
    }

    private static void put(List<List<Places>> layers, int cost, Places set) {
        while (layers.size() <= cost) {
            layers.add(new ArrayList<>());
        }
        layers.get(cost).add(set);
    }

    /** What can be finished at no more cost: a turn of a tool, then jobs of uncounted tools. */
    private Places closed(Places set, int tool) {
        Places done = set.copy();
        int count = 0;
        for (int job = 0; job < fromEnd.size(); job++) {
            if (!done.has(job) && done.hasAll(fromEnd.before(job))) {
                open[count++] = job;
            }
        }
        count = close(done, count, tool);
        close(done, count, -1);
        return done;
    }

    private int close(Places done, int before, int tool) {
        int count = before;
        for (int at = 0; at < count; ) {
            int job = open[at];
            if (tool >= 0 ? isOf(job, tool) : isFree(job)) {
                open[at] = open[--count];
                done.add(job);
                for (int next : fromEnd.next(job)) {
                    if (allowed(next, done)) {
                        open[count++] = next;
                    }
                }
                at = 0;
            } else {
                at++;
            }
        }
        return count;
    }

    private boolean allowed(int job, Places done) {
        for (int previous : fromEnd.previous(job)) {
            if (!done.has(previous)) {
                return false;
            }
        }
        return true;
    }

    private boolean isOf(int job, int tool) {
        return fromEnd.single(job) && fromEnd.first(job) == tool;
    }

    /** A job of several tools counts as free here, which is less than it costs. */
    private boolean isFree(int job) {
        return !fromEnd.single(job) || !counted[fromEnd.first(job)];
    }

    private List<Places> widestFew(List<Places> all) {
        Map<Places, Integer> sizes = new HashMap<>();
        all.forEach(set -> sizes.put(set, set.size()));
        List<Places> largestFirst = new ArrayList<>(sizes.keySet());
        largestFirst.sort(Comparator.comparing(sizes::get).reversed());
        List<Places> kept = new ArrayList<>();
        for (Places set : largestFirst) {
            if (kept.stream().noneMatch(other -> other.hasAll(set))) {
                if (kept.size() < widest) {
                    kept.add(set);
                } else {
                    nearest(kept, set).addAll(set);
                }
            }
        }
        return kept;
    }

    private static Places nearest(List<Places> kept, Places set) {
        Places best = kept.get(0);
        int least = Integer.MAX_VALUE;
        for (Places other : kept) {
            Places more = set.copy();
            more.removeAll(other);
            if (more.size() < least) {
                least = more.size();
                best = other;
            }
        }
        return best;
    }

    /** The least number of counted turns until all is done, when some jobs are open. */
    int atLeast(int[] allowedNow, int count) {
        int least = 0;
        int most = finished.size() - 1;
        while (least < most) {
            int middle = (least + most) >>> 1;
            if (canFinish(finished.get(middle), allowedNow, count)) {
                most = middle;
            } else {
                least = middle + 1;
            }
        }
        return least;
    }

    private static boolean canFinish(List<Places> sets, int[] allowedNow, int count) {
        for (Places set : sets) {
            boolean all = true;
            for (int at = 0; at < count && all; at++) {
                all = set.has(allowedNow[at]);
            }
            if (all) {
                return true;
            }
        }
        return false;
    }

    /** For the whole graph. */
    int atLeast() {
        return finished.size() - 1;
    }
}
