package counterstep.toolchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Asks for more and more changes whether they are enough. For each number it follows the states
 * that may end with so many, layer by layer, those of fewer changes first; all that was followed
 * for a smaller number stays and is not followed again. A state is dropped when another of its
 * layer has all done that it has.
 */
final class TurnSearch {
    private final ToolGraph graph;
    private final Turns turns;
    private final Rating rating;
    private final BooleanSupplier stopped;
    private final Rated start;
    private final List<Layer> layers = new ArrayList<>();
    private int followed;

    /** States of as many changes. */
    private static final class Layer {
        private final Supersets followed;
        private List<Rated> waiting = new ArrayList<>();

        Layer(ToolGraph graph) {
            followed = new Supersets(graph.size() + graph.tools() + 1);
        }

        /** Those that may end with so many; they wait no longer. */
        List<Rated> due(int most) {
            List<Rated> due = new ArrayList<>();
            List<Rated> later = new ArrayList<>();
            for (Rated each : waiting) {
                (each.atLeast <= most ? due : later).add(each);
            }
            waiting = later;
            return due;
        }
    }

    /**
     * What became of a number.
     *
     * @param end all done with so many changes
     * @param complete whether all was tried: then no end means that there is none
     */
    record Found(Optional<Turn> end, boolean complete) {}

    /**
     * @param turns of the graph
     * @param rating of that graph's states
     * @param start from where; its changes count as none
     */
    TurnSearch(Turns turns, Rating rating, Turn start, BooleanSupplier stopped) {
        this.graph = turns.graph();
        this.turns = turns;
        this.rating = rating;
        this.stopped = stopped;
        this.start = rating.start(start);
        layer(0).waiting.add(this.start);
    }

    private Layer layer(int cost) {
        while (layers.size() <= cost) {
            layers.add(new Layer(graph));
        }
        return layers.get(cost);
    }

    /** No order has fewer. */
    int atLeast() {
        return start.atLeast;
    }

    /** How many states were followed until now. */
    int followed() {
        return followed;
    }

    /**
     * Whether so many changes are enough, when it is known that fewer are not.
     *
     * @param useful how many would be of use: states that need more are forgotten
     * @param patience how many states are followed before it gives up
     */
    Found within(int changes, int useful, int patience) {
        int until = followed + patience;
        for (int cost = 0; cost <= changes; cost++) {
            Layer layer = layer(cost);
            List<Rated> due = distinct(layer.due(changes));
            due.sort(Rated.FULLEST_FIRST);
            for (Rated each : due) {
                if (each.state.isEnd()) {
                    return new Found(Optional.of(each.state), true);
                }
                if (!covered(layer, each.state)) {
                    if (followed == until || stopped.getAsBoolean()) {
                        return new Found(Optional.empty(), false);
                    }
                    followed++;
                    layer.followed.add(each.state.work.done(), handRow(each.state));
                    follow(each, useful);
                }
            }
        }
        return new Found(Optional.empty(), true);
    }

    private void follow(Rated state, int useful) {
        for (Turn next : turns.after(state.state)) {
            Rated rated = rating.after(state, next);
            if (rated.atLeast <= useful) {
                layer(next.cost).waiting.add(rated);
            }
        }
    }

    private boolean covered(Layer layer, Turn state) {
        Places outermost = state.work.outermost();
        return turns.needsItsHand(state)
                ? layer.followed.anyHas(outermost, handRow(state))
                : layer.followed.anyHas(outermost);
    }

    private int handRow(Turn state) {
        return graph.size() + 1 + state.hand;
    }

    /**
     * Looks for an end in a narrow strip, which may miss it.
     *
     * @param changes how many are allowed
     * @param width how many states of each layer are followed
     */
    Optional<Turn> narrow(int changes, int width) {
        List<List<Rated>> strip = new ArrayList<>();
        for (int cost = 0; cost <= changes; cost++) {
            strip.add(new ArrayList<>());
        }
        strip.get(0).add(start);
        for (int cost = 0; cost <= changes && !stopped.getAsBoolean(); cost++) {
            List<Rated> best = distinct(strip.get(cost));
            strip.set(cost, List.of());
            best.sort(Rated.BEST_FIRST);
            for (Rated each : best.subList(0, Math.min(width, best.size()))) {
                if (each.state.isEnd()) {
                    return Optional.of(each.state);
                }
                for (Turn next : turns.after(each.state)) {
                    Rated rated = rating.after(each, next);
                    if (rated.atLeast <= changes) {
                        strip.get(next.cost).add(rated);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static List<Rated> distinct(List<Rated> states) {
        record Key(Places done, int hand) {}
        Set<Key> seen = new HashSet<>();
        List<Rated> distinct = new ArrayList<>();
        for (Rated each : states) {
            if (seen.add(new Key(each.state.work.done(), each.state.hand))) {
                distinct.add(each);
            }
        }
        return distinct;
    }
}
