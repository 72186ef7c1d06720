package counterstep.toolchange;

/**
 * States of one cost, asked whether one of them has all done that another has. A bit for each state
 * and job, so that one question looks at 64 states at a time.
 */
final class Dominance {
    private final ToolGraph graph;

    /** By job: the states that have it done. */
    private final long[][] havingDone;

    /** By tool in hand: the states. */
    private final long[][] holding;

    private int count;

    Dominance(ToolGraph graph, int most) {
        this.graph = graph;
        int words = (most + 63) >> 6;
        havingDone = new long[graph.size()][words];
        holding = new long[graph.tools() + 1][words];
    }

    void add(Turn state) {
        int word = count >> 6;
        long bit = 1L << count;
        for (int job = state.done.next(0); job >= 0; job = state.done.next(job + 1)) {
            havingDone[job][word] |= bit;
        }
        holding[state.hand + 1][word] |= bit;
        count++;
    }

    /**
     * Whether some state has at least as much done.
     *
     * @param sameHand whether it must hold the same tool too
     */
    boolean covers(Turn state, boolean sameHand) {
        int[] outermost = outermost(state);
        for (int word = 0; word <= count >> 6 && word < holding[0].length; word++) {
            long left = sameHand ? holding[state.hand + 1][word] : -1L;
            if (word == count >> 6) {
                left &= (1L << count) - 1;
            }
            for (int at = 0; at < outermost.length && left != 0; at++) {
                left &= havingDone[outermost[at]][word];
            }
            if (left != 0) {
                return true;
            }
        }
        return false;
    }

    /** Done jobs that nothing done follows: who has these done has all done. */
    private int[] outermost(Turn state) {
        int[] found = new int[graph.size()];
        int size = 0;
        for (int job = state.done.next(0); job >= 0; job = state.done.next(job + 1)) {
            boolean followed = false;
            for (int next : graph.next(job)) {
                followed |= state.done.has(next);
            }
            if (!followed) {
                found[size++] = job;
            }
        }
        return java.util.Arrays.copyOf(found, size);
    }
}
