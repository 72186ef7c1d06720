package counterstep.links;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;

/**
 * The cheapest set of places that contains with each place all that come before it: a
 * minimum-weight closure, found as a minimum cut (Picard, Management Science 22, 1976). Since the
 * order is transitive, only places of weight below 0 need arcs, to those of weight above 0 before
 * them. Flow by shortest augmenting paths; time n⁵ at worst for n places, in practice a handful.
 */
public final class Closure {
    private static final int UNSEEN = -1;

    private final int[] weights;
    private final Order order;
    private final int source;
    private final int sink;
    private final int[][] residual;
    private int weight;

    /** A strict partial order of places. */
    @FunctionalInterface
    public interface Order {
        /** Whether one place comes before the other. */
        boolean before(int earlier, int later);
    }

    private Closure(int[] weights, Order order) {
        this.weights = weights.clone();
        this.order = order;
        this.source = weights.length;
        this.sink = weights.length + 1;
        this.residual = new int[weights.length + 2][weights.length + 2];
        for (int place = 0; place < weights.length; place++) {
            connect(place);
        }
        int[] cameFrom = search();
        while (cameFrom[sink] != UNSEEN) {
            weight += push(cameFrom);
            cameFrom = search();
        }
    }

    /** Finds the cheapest closed set; the empty one is closed and weighs 0. */
    public static Closure cheapest(int[] weights, Order order) {
        return new Closure(weights, order);
    }

    private void connect(int place) {
        if (weights[place] > 0) {
            residual[place][sink] = weights[place];
        } else if (weights[place] < 0) {
            weight += weights[place];
            residual[source][place] = -weights[place];
            for (int earlier = 0; earlier < weights.length; earlier++) {
                if (weights[earlier] > 0 && order.before(earlier, place)) {
                    residual[place][earlier] = Integer.MAX_VALUE / 2;
                }
            }
        }
    }

    /** From where each node was reached first; the source from itself. */
    private int[] search() {
        int[] cameFrom = new int[residual.length];
        Arrays.fill(cameFrom, UNSEEN);
        cameFrom[source] = source;
        Deque<Integer> waiting = new ArrayDeque<>();
        waiting.add(source);
        while (!waiting.isEmpty() && cameFrom[sink] == UNSEEN) {
            int here = waiting.remove();
            for (int there = 0; there < residual.length; there++) {
                if (residual[here][there] > 0 && cameFrom[there] == UNSEEN) {
                    cameFrom[there] = here;
                    waiting.add(there);
                }
            }
        }
        return cameFrom;
    }

    private int push(int[] cameFrom) {
        int flow = Integer.MAX_VALUE;
        for (int node = sink; node != source; node = cameFrom[node]) {
            flow = Math.min(flow, residual[cameFrom[node]][node]);
        }
        for (int node = sink; node != source; node = cameFrom[node]) {
            residual[cameFrom[node]][node] -= flow;
            residual[node][cameFrom[node]] += flow;
        }
        return flow;
    }

    /** What the set weighs; never above 0. */
    public int weight() {
        return weight;
    }

    /** The places of the set; of all the cheapest sets the smallest. */
    public BitSet places() {
        int[] cameFrom = search();
        BitSet chosen = new BitSet();
        for (int place = 0; place < weights.length; place++) {
            if (weights[place] < 0 && cameFrom[place] != UNSEEN) {
                chosen.set(place);
                for (int earlier = 0; earlier < weights.length; earlier++) {
                    if (order.before(earlier, place)) {
                        chosen.set(earlier);
                    }
                }
            }
        }
        return chosen;
    }
}
