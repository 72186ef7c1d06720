package counterstep.timetable;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** States with as many activities started; of two with the same ones the better alone. */
final class Layer {
    private static final Comparator<State> PROMISING =
            Comparator.comparingInt(State::bound).thenComparingInt(State::last);

    private final Board board;
    private final Map<BitSet, List<State>> states = new HashMap<>();

    Layer(Board board) {
        this.board = board;
    }

    /** Whether a state found before does for this one too. */
    boolean hasBetter(State state) {
        for (State other : states.getOrDefault(state.done(), List.of())) {
            if (other.noWorse(board, state)) {
                return true;
            }
        }
        return false;
    }

    /** Keeps one for which {@link #hasBetter} is false, in the place of those it does for. */
    void add(State state) {
        List<State> same = states.computeIfAbsent(state.done(), unused -> new ArrayList<>(1));
        same.removeIf(other -> state.noWorse(board, other));
        same.add(state);
    }

    /** The most promising, most so first. */
    List<State> best(int most) {
        List<State> all = new ArrayList<>();
        states.values().forEach(all::addAll);
        all.sort(PROMISING);
        return all.size() > most ? List.copyOf(all.subList(0, most)) : all;
    }

    boolean isWiderThan(int most) {
        return states.values().stream().mapToInt(List::size).sum() > most;
    }
}
