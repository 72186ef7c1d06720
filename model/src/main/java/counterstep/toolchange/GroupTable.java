package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * How many turns of a few tools are still to come at least, when all else costs nothing but still
 * puts the tool down. Solved from the end: for each number of turns the largest sets of jobs that
 * can be finished with so many.
 */
final class GroupTable {
    private final ToolGraph fromEnd;
    private final int group;
    private final List<Supersets> finished = new ArrayList<>();
    private final boolean whole;

    /**
     * @param fromEnd the graph looked at from its end
     * @param group the tools whose turns are counted, a bit each
     * @param most how many sets at most; a table that would need more is not whole
     */
    GroupTable(ToolGraph fromEnd, int group, int most, BooleanSupplier stopped) {
        this.fromEnd = fromEnd;
        this.group = group;
        Places[] singles = fromEnd.singles();
        Places free = Places.below(fromEnd.size());
        for (int job = 0; job < fromEnd.size(); job++) {
            if (!fromEnd.single(job) || !counts(fromEnd.first(job))) {
                free.add(job);
            }
        }
        Progress start = Progress.of(fromEnd, Places.below(fromEnd.size()));
        start.takeAll(free);
        List<Progress> layer = List.of(start);
        int sets = 0;
        while (sets <= most && !stopped.getAsBoolean()) {
            List<Progress> largest = largest(layer);
            sets += largest.size();
            if (largest.get(0).isEnd()) {
                whole = true;
                return;
            }
            layer = oneTurnMore(largest, singles, free);
        }
        whole = false;
    }

    /** Whether the tools counted have this one among them. */
    boolean counts(int tool) {
        return (group >> tool & 1) != 0;
    }

    private List<Progress> oneTurnMore(List<Progress> sets, Places[] singles, Places free) {
        List<Progress> more = new ArrayList<>();
        for (Progress set : sets) {
            for (int tool = 0; tool < singles.length; tool++) {
                if (counts(tool) && set.open().first(singles[tool]) >= 0) {
                    Progress next = set.copy();
                    next.takeAll(singles[tool]);
                    next.takeAll(free);
                    more.add(next);
                }
            }
        }
        return more;
    }

    private List<Progress> largest(List<Progress> sets) {
        record Sized(Progress work, int size) {}
        Set<Places> seen = new HashSet<>();
        List<Sized> bySize = new ArrayList<>();
        for (Progress set : sets) {
            if (seen.add(set.done())) {
                bySize.add(new Sized(set, set.done().size()));
            }
        }
        bySize.sort(Comparator.comparingInt(Sized::size).reversed());
        Supersets kept = new Supersets(fromEnd.size());
        List<Progress> largest = new ArrayList<>();
        for (Sized each : bySize) {
            if (!kept.anyHas(each.work().outermost())) {
                kept.add(each.work().done());
                largest.add(each.work());
            }
        }
        finished.add(kept);
        return largest;
    }

    /** Whether all was counted; else there is no bound. */
    boolean isWhole() {
        return whole;
    }

    /** For the whole graph. */
    int atLeast() {
        return finished.size() - 1;
    }

    /** Whether so many turns are enough when some jobs are open. */
    boolean isEnough(int turns, Places open) {
        return turns >= 0 && finished.get(turns).anyHas(open);
    }

    /** The least number of turns that is enough. */
    int atLeast(Places open) {
        int least = 0;
        int most = atLeast();
        while (least < most) {
            int middle = (least + most) >>> 1;
            if (isEnough(middle, open)) {
                most = middle;
            } else {
                least = middle + 1;
            }
        }
        return least;
    }
}
