package counterstep.toolchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Of the orders with no more than so many changes the one that follows the page longest: at each
 * place the earliest job of the page from which the rest can still be finished in time.
 */
final class NearestOrder {
    private static final int NARROW = 4;
    private static final int PAIR = 2;
    private static final int PARTITIONS = 4;
    private static final int MOST_SETS = 10_000;

    /** States that one question may cost. */
    private static final int PATIENCE = 20_000;

    private final ToolJobs jobs;
    private final ToolGraph graph;
    private final int[] numbers;
    private final Turns turns;
    private final Rating rating;
    private final BooleanSupplier stopped;
    private final Places done;
    private final Places handedDone;
    private List<Integer> plan;
    private int hand = -1;
    private int left;

    private NearestOrder(ToolJobs jobs, List<Integer> plan, int changes, BooleanSupplier stopped) {
        this.jobs = jobs;
        this.plan = new ArrayList<>(plan);
        this.left = changes;
        graph = jobs.graph();
        this.stopped = stopped;
        turns = new Turns(graph);
        Tables tables = new Tables(graph, stopped);
        rating = new Rating(graph, tables.bounds(PAIR, PARTITIONS, MOST_SETS));
        done = Places.below(jobs.size());
        handedDone = Places.below(graph.size());
        numbers = new int[jobs.size()];
        int[] handed = jobs.handed();
        for (int number = 0; number < handed.length; number++) {
            numbers[handed[number]] = number;
        }
    }

    /**
     * The order, as near as it is found before it is stopped.
     *
     * @param plan some order of the graph's jobs that has that many changes
     */
    static List<Integer> of(
            ToolJobs jobs, List<Integer> plan, int changes, BooleanSupplier stopped) {
        NearestOrder nearest = new NearestOrder(jobs, plan, changes, stopped);
        List<Integer> order = new ArrayList<>();
        while (order.size() < jobs.size()) {
            order.add(nearest.next());
        }
        return order;
    }

    private int next() {
        for (int job = 0; job < jobs.size(); job++) {
            if (!done.has(job) && done.hasAll(jobs.before(job)) && take(job)) {
                return job;
            }
        }
        throw new IllegalStateException("the plan itself does not go on: " + plan);
    }

    private boolean take(int job) {
        if (jobs.word(job).length > 0) {
            int number = numbers[job];
            int cost = changes(jobs.word(job));
            if (plan.get(0) != number && !(cost == 0 && graph.single(number))) {
                Optional<List<Integer>> rest = rest(number, left - cost);
                if (rest.isEmpty()) {
                    return false;
                }
                plan = new ArrayList<>(rest.get());
            } else {
                plan.remove((Integer) number);
            }
            left -= cost;
            hand = graph.last(number);
            handedDone.add(number);
        }
        done.add(job);
        return true;
    }

    private int changes(int[] word) {
        int changes = 0;
        int held = hand;
        for (int tool : word) {
            changes += tool == held ? 0 : 1;
            held = tool;
        }
        return changes;
    }

    /** How the rest can be done in so many changes when a job comes next; empty if it cannot. */
    private Optional<List<Integer>> rest(int number, int changes) {
        if (changes < 0) {
            return Optional.empty();
        }
        Places then = handedDone.copy();
        then.add(number);
        Turn from = turns.at(then, graph.last(number));
        TurnSearch search = new TurnSearch(turns, rating, from, stopped);
        Optional<Turn> end = search.narrow(changes, NARROW);
        for (int enough = search.atLeast(); enough <= changes && end.isEmpty(); enough++) {
            TurnSearch.Found found = search.within(enough, changes, PATIENCE);
            if (!found.complete()) {
                return Optional.empty();
            }
            end = found.end();
        }
        return end.map(turn -> turn.order(graph));
    }
}
