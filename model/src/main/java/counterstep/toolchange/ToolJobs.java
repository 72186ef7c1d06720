package counterstep.toolchange;

import counterstep.links.OrderDemands;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The steps of a document as jobs: each alone, or with those that stay in its company, in one of
 * the orders that these may have inside. The tools of a job are those its actions take up in turn;
 * a job of bare hands has none.
 */
final class ToolJobs {
    private final int tools;
    private final List<List<StepId>> steps;
    private final List<int[]> words;
    private final Places[] before;

    private ToolJobs(int tools, List<List<StepId>> steps, List<int[]> words, Places[] before) {
        this.tools = tools;
        this.steps = steps;
        this.words = words;
        this.before = before;
    }

    /** Bundles as jobs, each done in the first of the ways it has. */
    static ToolJobs of(
            List<Bundle> bundles,
            List<InsideOrders.Way> ways,
            OrderDemands demands,
            ToolWords words) {
        Places[] before = new Places[bundles.size()];
        for (int job = 0; job < bundles.size(); job++) {
            before[job] = Places.below(bundles.size());
        }
        for (int one = 0; one < bundles.size(); one++) {
            for (int other = 0; other < bundles.size(); other++) {
                if (one != other && leads(demands, bundles.get(one), bundles.get(other))) {
                    before[other].add(one);
                }
            }
        }
        List<List<StepId>> steps = new ArrayList<>();
        List<int[]> theirs = new ArrayList<>();
        for (InsideOrders.Way way : ways) {
            steps.add(way.places().stream().map(demands.steps()::get).toList());
            theirs.add(array(way.word()));
        }
        ToolJobs jobs = new ToolJobs(words.tools(), steps, theirs, before);
        jobs.close();
        return jobs;
    }

    /** The same jobs, one of them done in another way inside. */
    ToolJobs with(int job, InsideOrders.Way way, OrderDemands demands) {
        List<List<StepId>> otherSteps = new ArrayList<>(steps);
        List<int[]> otherWords = new ArrayList<>(words);
        otherSteps.set(job, way.places().stream().map(demands.steps()::get).toList());
        otherWords.set(job, array(way.word()));
        return new ToolJobs(tools, otherSteps, otherWords, before);
    }

    private static int[] array(List<Integer> word) {
        return word.stream().mapToInt(Integer::intValue).toArray();
    }

    private static boolean leads(OrderDemands demands, Bundle from, Bundle to) {
        for (int one : from.places()) {
            for (int other : to.places()) {
                if (demands.before(one, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Grouping makes new chains: a before b of a group, c of it before d. */
    private void close() {
        for (int middle = 0; middle < before.length; middle++) {
            for (Places mine : before) {
                if (mine.has(middle)) {
                    mine.addAll(before[middle]);
                }
            }
        }
    }

    /** Whether no order at all keeps the links and the companies. */
    boolean isImpossible() {
        for (int job = 0; job < before.length; job++) {
            if (before[job].has(job)) {
                return true;
            }
        }
        return false;
    }

    int size() {
        return steps.size();
    }

    List<StepId> steps(int job) {
        return steps.get(job);
    }

    int[] word(int job) {
        return words.get(job);
    }

    Places before(int job) {
        return before[job];
    }

    /** Changes inside the jobs are of the graph's words; jobs of bare hands are not in it. */
    ToolGraph graph() {
        int[] handed = handed();
        int[][] theirs = new int[handed.length][];
        Places[] theirBefore = new Places[handed.length];
        for (int job = 0; job < handed.length; job++) {
            theirs[job] = words.get(handed[job]);
            theirBefore[job] = Places.below(handed.length);
            for (int one = 0; one < handed.length; one++) {
                if (before[handed[job]].has(handed[one])) {
                    theirBefore[job].add(one);
                }
            }
        }
        return new ToolGraph(tools, theirs, theirBefore);
    }

    /** The jobs of the graph, by their number in it. */
    int[] handed() {
        List<Integer> found = new ArrayList<>();
        for (int job = 0; job < size(); job++) {
            if (words.get(job).length > 0) {
                found.add(job);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * An order of the graph's jobs as one of all: bare hands come as early as the page has them.
     */
    List<Integer> withBareHands(List<Integer> order) {
        int[] handed = handed();
        List<Integer> all = new ArrayList<>();
        Places done = Places.below(size());
        for (int number : order) {
            takeWithAllBefore(handed[number], all, done);
        }
        for (int job = 0; job < size(); job++) {
            takeWithAllBefore(job, all, done);
        }
        return all;
    }

    private void takeWithAllBefore(int job, List<Integer> all, Places done) {
        if (done.has(job)) {
            return;
        }
        List<Integer> missing = new ArrayList<>();
        for (int one = before[job].next(0); one >= 0; one = before[job].next(one + 1)) {
            if (!done.has(one)) {
                missing.add(one);
            }
        }
        missing.sort(Comparator.comparingInt((Integer one) -> before[one].size()));
        missing.add(job);
        for (int one : missing) {
            all.add(one);
            done.add(one);
        }
    }
}
