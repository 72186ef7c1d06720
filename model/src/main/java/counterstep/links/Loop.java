package counterstep.links;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Finds one loop: the shortest through the earliest place that lies on any. */
final class Loop {
    private static final int UNSEEN = -1;

    private Loop() {}

    /** The places of a loop in the order of its links, each once; empty if there is none. */
    static Optional<List<Integer>> find(List<List<Integer>> next, Reachability reachability) {
        for (int start = 0; start < reachability.size(); start++) {
            if (reachability.reaches(start, start)) {
                return Optional.of(shortest(next, start));
            }
        }
        return Optional.empty();
    }

    private static List<Integer> shortest(List<List<Integer>> next, int start) {
        int[] cameFrom = new int[next.size()];
        Arrays.fill(cameFrom, UNSEEN);
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        while (cameFrom[start] == UNSEEN) {
            int here = waiting.remove();
            for (int there : next.get(here)) {
                if (cameFrom[there] == UNSEEN) {
                    cameFrom[there] = here;
                    waiting.add(there);
                }
            }
        }
        Deque<Integer> rest = new ArrayDeque<>();
        for (int place = cameFrom[start]; place != start; place = cameFrom[place]) {
            rest.addFirst(place);
        }
        rest.addFirst(start);
        return List.copyOf(rest);
    }
}
