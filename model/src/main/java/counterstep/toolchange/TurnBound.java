package counterstep.toolchange;

/**
 * How many turns are still to come at least: for each tool the turns of it that one chain of jobs
 * forces, added up, since each turn has one tool. One pass over the graph for each tool.
 */
final class TurnBound {
    private final int tools;

    /** Turns of a tool from a job on, that tool not in hand before; by job, then by tool. */
    private final int[][] anew;

    /** The same with that tool in hand before. */
    private final int[][] inHand;

    TurnBound(ToolGraph graph) {
        tools = graph.tools();
        anew = new int[graph.size()][tools];
        inHand = new int[graph.size()][tools];
        for (int job : fromTheEnd(graph)) {
            for (int tool = 0; tool < tools; tool++) {
                int restAnew = 0;
                int restInHand = 0;
                for (int next : graph.next(job)) {
                    restAnew = Math.max(restAnew, anew[next][tool]);
                    restInHand = Math.max(restInHand, inHand[next][tool]);
                }
                int turns = 0;
                int before = -1;
                for (int used : graph.word(job)) {
                    if (used == tool && before != tool) {
                        turns++;
                    }
                    before = used;
                }
                int rest = graph.last(job) == tool ? restInHand : restAnew;
                anew[job][tool] = turns + rest;
                inHand[job][tool] = turns + rest - (graph.first(job) == tool ? 1 : 0);
            }
        }
    }

    private static int[] fromTheEnd(ToolGraph graph) {
        int[] left = new int[graph.size()];
        int[] order = new int[graph.size()];
        int filled = 0;
        for (int job = 0; job < graph.size(); job++) {
            left[job] = graph.next(job).length;
            if (left[job] == 0) {
                order[filled++] = job;
            }
        }
        for (int at = 0; at < filled; at++) {
            for (int previous : graph.previous(order[at])) {
                if (--left[previous] == 0) {
                    order[filled++] = previous;
                }
            }
        }
        return order;
    }

    /**
     * The least number of turns.
     *
     * @param open the jobs that are allowed now; all others to come follow one of them
     * @param hand the tool in hand; -1 for none
     */
    int atLeast(Places open, int hand) {
        int sum = 0;
        for (int tool = 0; tool < tools; tool++) {
            int[][] turns = tool == hand ? inHand : anew;
            int most = 0;
            for (int job = open.next(0); job >= 0; job = open.next(job + 1)) {
                most = Math.max(most, turns[job][tool]);
            }
            sum += most;
        }
        return sum;
    }
}
