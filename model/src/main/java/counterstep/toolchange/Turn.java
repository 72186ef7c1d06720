package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A state of the work: what is done, with which tool in hand, after how many changes; and the turn
 * that led to it.
 */
final class Turn {
    final Places done;
    final int hand;
    final int cost;

    /** Jobs that are allowed now. */
    final int[] open;

    private final Turn from;
    private final int[] jobs;

    Turn(Places done, int hand, int cost, int[] open, Turn from, int[] jobs) {
        this.done = done;
        this.hand = hand;
        this.cost = cost;
        this.open = open;
        this.from = from;
        this.jobs = jobs;
    }

    boolean isEnd() {
        return open.length == 0;
    }

    /** The jobs from the beginning to here, in order. */
    List<Integer> order() {
        List<Integer> order = new ArrayList<>();
        for (Turn at = this; at != null; at = at.from) {
            for (int place = at.jobs.length - 1; place >= 0; place--) {
                order.add(at.jobs[place]);
            }
        }
        Collections.reverse(order);
        return order;
    }
}
