package counterstep.links;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;

/**
 * Which place can be reached from which along one link or more: a bit matrix. Without a loop each
 * place gathers what its next ones reach, last places first, in time m · n / 64 for m links. With a
 * loop it is closed by the method of Warshall (1962, from memory), which needs no order, in time n²
 * · n / 64.
 */
final class Reachability {
    private final BitSet[] reached;

    private Reachability(BitSet... reached) {
        this.reached = reached;
    }

    Reachability(List<List<Integer>> next) {
        reached = new BitSet[next.size()];
        for (int from = 0; from < reached.length; from++) {
            reached[from] = new BitSet(reached.length);
            next.get(from).forEach(reached[from]::set);
        }
        List<Integer> order = order(next);
        if (order.size() == reached.length) {
            Collections.reverse(order);
            for (int from : order) {
                next.get(from).forEach(to -> reached[from].or(reached[to]));
            }
        } else {
            closeLoops();
        }
    }

    /** The places each after those that lead to it; without those on a loop and beyond. */
    private static List<Integer> order(List<List<Integer>> next) {
        int[] open = new int[next.size()];
        next.forEach(places -> places.forEach(to -> open[to]++));
        List<Integer> order = new ArrayList<>();
        for (int place = 0; place < open.length; place++) {
            if (open[place] == 0) {
                order.add(place);
            }
        }
        for (int done = 0; done < order.size(); done++) {
            for (int to : next.get(order.get(done))) {
                if (--open[to] == 0) {
                    order.add(to);
                }
            }
        }
        return order;
    }

    private void closeLoops() {
        for (int through = 0; through < reached.length; through++) {
            for (BitSet row : reached) {
                if (row.get(through)) {
                    row.or(reached[through]);
                }
            }
        }
    }

    boolean reaches(int from, int to) {
        return reached[from].get(to);
    }

    /** Whether two places lie on a loop together; a place lies with itself. */
    boolean together(int one, int other) {
        return one == other || reaches(one, other) && reaches(other, one);
    }

    /** What comes after a place and not also before it; a copy. */
    BitSet beyond(int from) {
        BitSet beyond = (BitSet) reached[from].clone();
        if (reaches(from, from)) {
            reached[from].stream().filter(to -> reaches(to, from)).forEach(beyond::clear);
        }
        return beyond;
    }

    /** Whether any of these places can be reached from there. */
    boolean leadsInto(int from, BitSet places) {
        return reached[from].intersects(places);
    }

    /** The same with one more link. */
    Reachability with(int before, int after) {
        BitSet gained = (BitSet) reached[after].clone();
        gained.set(after);
        BitSet[] more = reached.clone();
        for (int place = 0; place < more.length; place++) {
            if (place == before || reached[place].get(before)) {
                more[place] = (BitSet) reached[place].clone();
                more[place].or(gained);
            }
        }
        return new Reachability(more);
    }

    int size() {
        return reached.length;
    }
}
