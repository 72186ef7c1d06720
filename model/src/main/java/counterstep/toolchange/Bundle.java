package counterstep.toolchange;

import counterstep.links.Company;
import counterstep.links.OrderDemands;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Steps done without a break: one alone, or all of the companies that share a step with one another
 * (two runs without a gap that share a step are one run without a gap).
 *
 * @param places of its steps in page order, rising
 * @param companies those inside it
 */
record Bundle(List<Integer> places, List<Company> companies) {
    /** Copies the lists. */
    Bundle {
        places = List.copyOf(places);
        companies = List.copyOf(companies);
    }

    /** All steps of a document, in bundles; in the order of the first step of each. */
    static List<Bundle> of(OrderDemands demands) {
        int size = demands.steps().size();
        int[] root = new int[size];
        for (int place = 0; place < size; place++) {
            root[place] = place;
        }
        for (Company company : demands.companies()) {
            int first = demands.page(company.steps().get(0));
            company.steps().forEach(step -> join(root, first, demands.page(step)));
        }
        List<Bundle> bundles = new ArrayList<>();
        BitSet taken = new BitSet();
        for (int place = 0; place < size; place++) {
            if (!taken.get(place)) {
                Bundle bundle = at(place, root, demands);
                bundle.places.forEach(taken::set);
                bundles.add(bundle);
            }
        }
        return bundles;
    }

    private static Bundle at(int place, int[] root, OrderDemands demands) {
        int mine = find(root, place);
        List<Integer> places = new ArrayList<>();
        for (int other = place; other < root.length; other++) {
            if (find(root, other) == mine) {
                places.add(other);
            }
        }
        return new Bundle(
                places,
                demands.companies().stream()
                        .filter(company -> places.contains(demands.page(company.steps().get(0))))
                        .toList());
    }

    private static void join(int[] root, int one, int other) {
        root[find(root, one)] = find(root, other);
    }

    private static int find(int[] root, int place) {
        int at = place;
        while (root[at] != at) {
            at = root[at];
        }
        return at;
    }

    /** Each step for itself. */
    static List<Bundle> single(OrderDemands demands) {
        List<Bundle> bundles = new ArrayList<>();
        for (int place = 0; place < demands.steps().size(); place++) {
            bundles.add(new Bundle(List.of(place), List.of()));
        }
        return bundles;
    }
}
