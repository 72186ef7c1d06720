package counterstep.toolchange;

import counterstep.links.OrderDemands;
import java.util.ArrayList;
import java.util.List;

/**
 * The jobs of a document in each combination of the orders inside its bundles: the fewest changes
 * of all of them are the fewest of the document.
 */
final class Choices {
    private static final int MOST = 64;

    private final OrderDemands demands;
    private final ToolWords words;
    private final List<ToolJobs> all = new ArrayList<>();
    private boolean complete = true;

    private Choices(OrderDemands demands, ToolWords words) {
        this.demands = demands;
        this.words = words;
        List<Bundle> bundles = Bundle.of(demands);
        List<List<InsideOrders.Way>> ways = new ArrayList<>();
        for (Bundle bundle : bundles) {
            InsideOrders inside = InsideOrders.of(bundle, demands, words);
            complete &= inside.complete();
            ways.add(inside.ways());
        }
        if (ways.stream().noneMatch(List::isEmpty)) {
            List<InsideOrders.Way> first = ways.stream().map(list -> list.get(0)).toList();
            all.add(ToolJobs.of(bundles, first, demands, words));
            for (int job = 0; job < ways.size(); job++) {
                multiply(job, ways.get(job));
            }
        }
    }

    static Choices of(OrderDemands demands, ToolWords words) {
        return new Choices(demands, words);
    }

    private void multiply(int job, List<InsideOrders.Way> ways) {
        List<ToolJobs> before = List.copyOf(all);
        for (InsideOrders.Way way : ways.subList(1, ways.size())) {
            for (ToolJobs jobs : before) {
                if (all.size() < MOST) {
                    all.add(jobs.with(job, way, demands));
                } else {
                    complete = false;
                }
            }
        }
    }

    /** Whether no order at all keeps what is asked. */
    boolean isImpossible() {
        return all.isEmpty() || all.get(0).isImpossible();
    }

    /** At least one, the shortest ways first. */
    List<ToolJobs> all() {
        return all;
    }

    /** Whether there are no others. */
    boolean complete() {
        return complete;
    }

    /** Each step for itself, in no company: what that needs at least, all need. */
    ToolJobs single() {
        List<Bundle> bundles = Bundle.single(demands);
        return ToolJobs.of(
                bundles,
                bundles.stream()
                        .map(Bundle::places)
                        .map(places -> new InsideOrders.Way(places, words.of(places)))
                        .toList(),
                demands,
                words);
    }
}
