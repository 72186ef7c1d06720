package counterstep.ledger;

import counterstep.links.Precedence;
import counterstep.model.ItemId;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Answers questions under one set of links: by a cut, by a walk, or by a bound. */
final class Answers {
    private final Deeds deeds;
    private final Precedence precedence;
    private final Tracks tracks;
    private final LeastSum sums;
    private final Bound bound;

    Answers(Deeds deeds, Precedence precedence) {
        this(deeds, precedence, Walk.LIMIT);
    }

    /** The same with a limit of its own to what is walked. */
    Answers(Deeds deeds, Precedence precedence, int limit) {
        this.deeds = deeds;
        this.precedence = precedence;
        this.tracks = new Tracks(deeds, precedence, limit);
        this.sums = new LeastSum(deeds, precedence);
        this.bound = new Bound(deeds, precedence, sums);
    }

    /** Whether a condition holds in every order. */
    boolean holds(Question question) {
        Demand demand = question.demand();
        if (sums.exact(demand)) {
            return sums.holds(question);
        }
        return tracks.walk(demand.about())
                .map(walk -> holds(question, walk))
                .orElseGet(() -> bound.holds(question));
    }

    private boolean holds(Question question, Walk walk) {
        Starts starts = new Starts(tracks.of(question.demand().about()), walk, precedence);
        return starts.of(question).allMatch(start -> starts.holds(question, start));
    }

    /** An order in which a condition that does not hold in every order fails. */
    Witness witness(Question question) {
        return new WitnessSearch(deeds, precedence, tracks, sums).witness(question);
    }

    /** The places in page order of the steps that can make a difference to an item. */
    List<Integer> concerned(ItemId item) {
        SortedSet<Integer> pages = new TreeSet<>(tracks.of(item).pages());
        pages.addAll(tracks.of(item).idleWaits());
        return List.copyOf(pages);
    }
}
