package counterstep.timetable;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Looks for a timetable within a deadline: layer by layer, by how many activities have started, in
 * order of their starts. A narrow search keeps the most promising of each layer; one that left
 * nothing out proves that there is none.
 */
final class Search {
    private static final int BETWEEN_LOOKS = 64;

    private final Board board;
    private final BooleanSupplier stopped;

    Search(Board board, BooleanSupplier stopped) {
        this.board = board;
        this.stopped = stopped;
    }

    /**
     * How it ended.
     *
     * @param end a whole timetable within the deadline
     * @param atLeast no timetable is shorter; 0 where the search left something out
     * @param states how many were looked at
     */
    record Outcome(Optional<State> end, int atLeast, long states) {}

    Outcome within(int deadline, int width) {
        boolean whole = true;
        long states = 0;
        int leastLeftOut = Integer.MAX_VALUE;
        List<State> layer = List.of(State.empty(board));
        for (int count = 0; count < board.size && !layer.isEmpty(); count++) {
            Layer next = new Layer(board);
            Expansion expansion = new Expansion(board, deadline, next);
            for (State state : layer) {
                if (states++ % BETWEEN_LOOKS == 0 && stopped.getAsBoolean()) {
                    return new Outcome(Optional.empty(), 0, states);
                }
                expansion.expand(state);
            }
            leastLeftOut = Math.min(leastLeftOut, expansion.leastLeftOut());
            layer = next.best(width);
            whole &= !next.isWiderThan(width);
        }
        return layer.isEmpty()
                ? new Outcome(Optional.empty(), whole ? leastLeftOut : 0, states)
                : new Outcome(Optional.of(layer.get(0)), 0, states);
    }
}
