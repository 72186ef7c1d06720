package counterstep.toolchange;

import counterstep.links.Company;
import counterstep.links.OrderDemands;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The orders inside a bundle that matter: of those that begin and end with the same tools, the one
 * of fewest changes that follows the page longest; none that another replaces at no cost.
 */
final class InsideOrders {
    /** So many states are looked at before the rest is given up. */
    private static final int MOST = 20_000;

    /**
     * One order.
     *
     * @param places of the steps in page order, as they are done
     * @param word their tools in turn
     */
    record Way(List<Integer> places, List<Integer> word) {
        private int first() {
            return word.get(0);
        }

        private int last() {
            return word.get(word.size() - 1);
        }
    }

    private record State(Places done, int first, int last) {}

    private final Bundle bundle;
    private final OrderDemands demands;
    private final ToolWords words;
    private final List<int[]> companies = new ArrayList<>();
    private final boolean[] inTurn;
    private final boolean oneTool;
    private final Map<State, Integer> reached = new HashMap<>();
    private final Map<List<Integer>, Way> found = new HashMap<>();
    private final List<Integer> begun = new ArrayList<>();
    private int looked;

    private InsideOrders(Bundle bundle, OrderDemands demands, ToolWords words) {
        this.bundle = bundle;
        this.demands = demands;
        this.words = words;
        inTurn = new boolean[bundle.companies().size()];
        for (Company company : bundle.companies()) {
            inTurn[companies.size()] = company.reason() == Company.Reason.RIGHT_AFTER;
            companies.add(company.steps().stream().mapToInt(this::inside).toArray());
        }
        oneTool = tools(bundle, words) < 2;
    }

    private static long tools(Bundle bundle, ToolWords words) {
        return bundle.places().stream()
                .flatMapToInt(place -> Arrays.stream(words.of(place)))
                .distinct()
                .count();
    }

    private int inside(StepId step) {
        return bundle.places().indexOf(demands.page(step));
    }

    static InsideOrders of(Bundle bundle, OrderDemands demands, ToolWords words) {
        InsideOrders orders = new InsideOrders(bundle, demands, words);
        orders.grow(Places.below(bundle.places().size()));
        return orders;
    }

    /** Whether all were looked at. */
    boolean complete() {
        return looked < MOST;
    }

    /** None if links and companies contradict each other. */
    List<Way> ways() {
        return found.values().stream()
                .filter(way -> found.values().stream().noneMatch(one -> replaces(one, way)))
                .sorted(
                        Comparator.comparingInt((Way way) -> way.word.size())
                                .thenComparing(way -> way.places, InsideOrders::byPage))
                .toList();
    }

    private static int byPage(List<Integer> one, List<Integer> other) {
        int at = 0;
        while (at < one.size() && one.get(at).equals(other.get(at))) {
            at++;
        }
        return at < one.size() ? Integer.compare(one.get(at), other.get(at)) : 0;
    }

    /** Whether one way, wherever it stands, costs no more than another. */
    private static boolean replaces(Way one, Way other) {
        if (one.equals(other) || one.word.isEmpty()) {
            return false;
        }
        int cost =
                one.word.size()
                        + (one.first() == other.first() ? 0 : 1)
                        + (one.last() == other.last() ? 0 : 1);
        return cost <= other.word.size();
    }

    private void grow(Places done) {
        if (begun.size() == bundle.places().size()) {
            keep();
            return;
        }
        for (int next = 0; next < bundle.places().size(); next++) {
            boolean enough = !complete() || oneTool && !found.isEmpty();
            if (!enough && !done.has(next) && allowed(next, done)) {
                begun.add(bundle.places().get(next));
                Places then = done.copy();
                then.add(next);
                if (isNews(then)) {
                    grow(then);
                }
                begun.remove(begun.size() - 1);
            }
        }
    }

    private boolean isNews(Places done) {
        looked++;
        List<Integer> word = words.of(begun);
        State state =
                new State(
                        done,
                        word.isEmpty() ? -1 : word.get(0),
                        word.isEmpty() ? -1 : word.get(word.size() - 1));
        Integer before = reached.get(state);
        if (before != null && before <= word.size()) {
            return false;
        }
        reached.put(state, word.size());
        return true;
    }

    private boolean allowed(int next, Places done) {
        for (int one = 0; one < bundle.places().size(); one++) {
            if (!done.has(one)
                    && one != next
                    && demands.before(bundle.places().get(one), bundle.places().get(next))) {
                return false;
            }
        }
        for (int number = 0; number < inTurn.length; number++) {
            if (!keeps(companies.get(number), inTurn[number], next, done)) {
                return false;
            }
        }
        return true;
    }

    private static boolean keeps(int[] company, boolean inTurn, int next, Places done) {
        int begun = 0;
        int at = -1;
        for (int number = 0; number < company.length; number++) {
            begun += done.has(company[number]) ? 1 : 0;
            at = company[number] == next ? number : at;
        }
        boolean between = begun > 0 && begun < company.length;
        return at < 0 ? !between : !inTurn || at == begun;
    }

    private void keep() {
        Way way = new Way(List.copyOf(begun), words.of(begun));
        List<Integer> ends = way.word.isEmpty() ? List.of() : List.of(way.first(), way.last());
        Way known = found.get(ends);
        if (known == null || way.word.size() < known.word.size()) {
            found.put(ends, way);
        }
    }
}
