package counterstep.toolchange;

import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out jobs that can be done together with another at no cost: v goes with y when both are of
 * one and the same tool, and what must come before v must come before y or is y, and what must come
 * after it likewise. Beside y it is allowed and free, and to leave a job out never costs anything.
 */
final class Folding {
    private record Fold(int gone, int with) {}

    private final ToolGraph whole;
    private final List<Fold> folds = new ArrayList<>();
    private final Places alive;
    private final int[] kept;

    private Folding(ToolGraph whole) {
        this.whole = whole;
        alive = Places.below(whole.size());
        for (int job = 0; job < whole.size(); job++) {
            alive.add(job);
        }
        boolean more = true;
        while (more) {
            more = foldOnce();
        }
        kept = new int[alive.size()];
        int at = 0;
        for (int job = alive.next(0); job >= 0; job = alive.next(job + 1)) {
            kept[at++] = job;
        }
    }

    static Folding of(ToolGraph whole) {
        return new Folding(whole);
    }

    private boolean foldOnce() {
        List<List<Integer>> byTool = new ArrayList<>();
        for (int tool = 0; tool < whole.tools(); tool++) {
            byTool.add(new ArrayList<>());
        }
        for (int job = alive.next(0); job >= 0; job = alive.next(job + 1)) {
            if (whole.single(job)) {
                byTool.get(whole.first(job)).add(job);
            }
        }
        boolean folded = false;
        for (List<Integer> alike : byTool) {
            for (int gone : alike) {
                folded |= fold(gone, alike);
            }
        }
        return folded;
    }

    private boolean fold(int gone, List<Integer> alike) {
        Places above = living(whole.before(gone));
        Places below = living(whole.after(gone));
        for (int with : alike) {
            if (with != gone
                    && alive.has(with)
                    && within(above, whole.before(with), with)
                    && within(below, whole.after(with), with)) {
                alive.remove(gone);
                folds.add(new Fold(gone, with));
                return true;
            }
        }
        return false;
    }

    private Places living(Places all) {
        Places left = all.copy();
        left.retainAll(alive);
        return left;
    }

    private static boolean within(Places some, Places others, int one) {
        boolean had = some.has(one);
        some.remove(one);
        boolean all = others.hasAll(some);
        if (had) {
            some.add(one);
        }
        return all;
    }

    /** What is left. */
    ToolGraph graph() {
        return whole.only(kept);
    }

    /** An order of what is left as an order of all, with as many changes. */
    List<Integer> unfolded(List<Integer> order) {
        List<Integer> all = new ArrayList<>();
        order.forEach(job -> all.add(kept[job]));
        for (int at = folds.size() - 1; at >= 0; at--) {
            Fold fold = folds.get(at);
            int place = all.indexOf(fold.with());
            all.add(whole.after(fold.gone()).has(fold.with()) ? place : place + 1, fold.gone());
        }
        return all;
    }
}
