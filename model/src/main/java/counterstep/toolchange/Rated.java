package counterstep.toolchange;

import java.util.Comparator;

/** A state of the work and what its end costs at least. */
final class Rated {
    static final Comparator<Rated> FULLEST_FIRST =
            Comparator.comparingInt((Rated rated) -> rated.size).reversed();

    static final Comparator<Rated> BEST_FIRST =
            Comparator.comparingInt((Rated rated) -> rated.atLeast).thenComparing(FULLEST_FIRST);

    final Turn state;

    /** Turns still to come, by table. */
    final short[] left;

    /** Changes of every order that goes on from it, those until now included. */
    final int atLeast;

    private final int size;

    Rated(Turn state, short[] left, int atLeast) {
        this.state = state;
        this.left = left;
        this.atLeast = atLeast;
        size = state.work.done().size();
    }
}
