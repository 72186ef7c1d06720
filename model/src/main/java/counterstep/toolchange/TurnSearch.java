package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Looks for the least number of turns, layer by layer: first all states after one change, then all
 * after two, and so on. A state is dropped when another of its layer has all done that it has, or
 * when the bound says that it cannot end in time.
 */
final class TurnSearch {
    /** Then memory rather than time would be what ends it. */
    private static final int MOST_STATES = 2_000_000;

    private final ToolGraph graph;
    private final Turns turns;
    private final TurnBound bound;
    private final BooleanSupplier stopped;
    private List<GroupBound> groups = List.of();

    /**
     * What a search has found.
     *
     * @param end a state with all done, of the least cost if nothing was left out
     * @param complete whether nothing was left out: then no end means that there is none
     */
    record Found(Optional<Turn> end, boolean complete) {}

    /** A state and what its end costs at least. */
    private record Rated(Turn state, int bound, int size) {}

    private static final Comparator<Rated> BEST_FIRST =
            Comparator.comparingInt(Rated::bound)
                    .thenComparing(Comparator.comparingInt(Rated::size).reversed());

    private static final Comparator<Rated> FULLEST_FIRST =
            Comparator.comparingInt(Rated::size).reversed();

    TurnSearch(ToolGraph graph, BooleanSupplier stopped) {
        this.graph = graph;
        this.stopped = stopped;
        turns = new Turns(graph);
        bound = new TurnBound(graph);
    }

    Turns turns() {
        return turns;
    }

    int atLeast(Turn state) {
        int rest = bound.atLeast(state.open, state.open.length, state.hand);
        return state.cost + Math.max(rest, inGroups(state));
    }

    private int inGroups(Turn state) {
        int sum = turns.needsItsHand(state) ? -1 : 0;
        for (GroupBound group : groups) {
            sum += group.atLeast(state.open, state.open.length);
        }
        return sum;
    }

    /** Takes stronger bounds to help: of groups that no two share a tool. */
    void boundBy(List<GroupBound> disjoint) {
        groups = disjoint;
    }

    /**
     * Looks for an end.
     *
     * @param start from where
     * @param most how many changes it may have at most, those before the start included
     * @param width how many states of a layer are followed; a narrow search may miss an end
     */
    Found within(Turn start, int most, int width) {
        List<List<Rated>> layers = new ArrayList<>();
        for (int cost = 0; cost <= most; cost++) {
            layers.add(new ArrayList<>());
        }
        boolean complete = true;
        int followed = 0;
        if (atLeast(start) > most) {
            return new Found(Optional.empty(), true);
        }
        layers.get(start.cost).add(rated(start));
        for (int cost = start.cost; cost <= most; cost++) {
            List<Rated> layer = layers.get(cost);
            layers.set(cost, List.of());
            Optional<Turn> end = end(layer);
            if (end.isPresent()) {
                return new Found(end, complete);
            }
            List<Rated> kept = undominated(layer, width);
            complete &= kept.size() <= width;
            if (kept.size() > width) {
                kept = kept.subList(0, width);
            }
            for (Rated each : kept) {
                if (stopped.getAsBoolean() || ++followed > MOST_STATES) {
                    return new Found(Optional.empty(), false);
                }
                follow(each.state(), most, layers);
            }
        }
        return new Found(Optional.empty(), complete);
    }

    private static Optional<Turn> end(List<Rated> layer) {
        return layer.stream().map(Rated::state).filter(Turn::isEnd).findFirst();
    }

    private void follow(Turn state, int most, List<List<Rated>> layers) {
        for (Turn next : turns.after(state)) {
            Rated rated = rated(next);
            if (rated.bound() <= most) {
                layers.get(next.cost).add(rated);
            }
        }
    }

    private Rated rated(Turn state) {
        return new Rated(state, atLeast(state), state.done.size());
    }

    private List<Rated> undominated(List<Rated> layer, int width) {
        List<Rated> distinct = distinct(layer);
        boolean narrow = width < distinct.size();
        distinct.sort(narrow && width < Integer.MAX_VALUE ? BEST_FIRST : FULLEST_FIRST);
        if (narrow && width < Integer.MAX_VALUE) {
            return distinct;
        }
        Dominance dominance = new Dominance(graph, distinct.size());
        List<Rated> kept = new ArrayList<>();
        for (Rated each : distinct) {
            if (!dominance.covers(each.state(), turns.needsItsHand(each.state()))) {
                dominance.add(each.state());
                kept.add(each);
            }
        }
        return kept;
    }

    private static List<Rated> distinct(List<Rated> layer) {
        record Key(Places done, int hand) {}
        Set<Key> seen = new HashSet<>();
        List<Rated> distinct = new ArrayList<>();
        for (Rated each : layer) {
            if (seen.add(new Key(each.state().done, each.state().hand))) {
                distinct.add(each);
            }
        }
        return distinct;
    }
}
