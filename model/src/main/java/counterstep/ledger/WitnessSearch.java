package counterstep.ledger;

import counterstep.ledger.Walk.Reached;
import counterstep.ledger.Witness.Reading;
import counterstep.links.Precedence;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the order to show for a condition that fails in some order. */
final class WitnessSearch {
    private final Deeds deeds;
    private final Precedence precedence;
    private final Tracks tracks;
    private final LeastSum sums;

    WitnessSearch(Deeds deeds, Precedence precedence, Tracks tracks, LeastSum sums) {
        this.deeds = deeds;
        this.precedence = precedence;
        this.tracks = tracks;
        this.sums = sums;
    }

    /** The fewest steps after which the condition fails; of equals those first on the page. */
    Witness witness(Question question) {
        ItemId about = question.demand().about();
        return tracks.walk(about)
                .map(walk -> walked(question, walk))
                .orElseGet(() -> cut(question));
    }

    private Witness walked(Question question, Walk walk) {
        Track track = tracks.of(question.demand().about());
        Starts starts = new Starts(track, walk, precedence);
        Reached fewest =
                starts.of(question)
                        .filter(start -> !starts.holds(question, start))
                        .min(
                                Comparator.comparingInt(
                                                (Reached start) ->
                                                        first(question, track, start).cardinality())
                                        .thenComparing(
                                                start -> first(question, track, start),
                                                WitnessSearch::earlier))
                        .orElseThrow();
        List<Integer> chain =
                sums.exact(question.demand())
                        ? List.of()
                        : fewest.order().stream().map(track.pages()::get).toList();
        BitSet first = first(question, track, fewest);
        return witness(question, track, order(first, track, chain), false);
    }

    private List<Integer> order(BitSet first, Track track, List<Integer> chain) {
        BitSet idle = new BitSet();
        track.idleWaits().stream().filter(first::get).forEach(idle::set);
        idle = precedence.closure(idle);
        BitSet rest = (BitSet) first.clone();
        rest.andNot(idle);
        List<Integer> order = new ArrayList<>(precedence.order(idle, List.of()));
        order.addAll(precedence.order(rest, chain));
        return order;
    }

    private Witness cut(Question question) {
        BitSet first = precedence.closure(sums.worst(question));
        first.or(needed(question));
        List<Integer> order = precedence.order(first, List.of());
        Track track = tracks.of(question.demand().about());
        return witness(question, track, order, !sums.exact(question.demand()));
    }

    private static int earlier(BitSet one, BitSet other) {
        BitSet difference = (BitSet) one.clone();
        difference.xor(other);
        int page = difference.nextSetBit(0);
        if (page < 0) {
            return 0;
        }
        return one.get(page) ? -1 : 1;
    }

    /** What must be done to have done this much of the track before the step. */
    private BitSet first(Question question, Track track, Reached start) {
        BitSet pages = new BitSet();
        start.done().stream().map(track.pages()::get).forEach(pages::set);
        BitSet first = precedence.closure(pages);
        first.or(needed(question));
        return first;
    }

    private BitSet needed(Question question) {
        BitSet needed = new BitSet();
        if (question.page() == deeds.size()) {
            needed.set(0, deeds.size());
            return needed;
        }
        needed.set(question.page());
        needed = precedence.closure(needed);
        needed.clear(question.page());
        return needed;
    }

    private Witness witness(Question question, Track track, List<Integer> order, boolean bound) {
        ItemId about = question.demand().about();
        Optional<StepId> then =
                question.page() == deeds.size()
                        ? Optional.empty()
                        : Optional.of(precedence.steps().get(question.page()));
        return new Witness(
                precedence.ids(order), then, about, readings(track, about, order), bound);
    }

    private List<Reading> readings(Track track, ItemId about, List<Integer> order) {
        List<Reading> readings = new ArrayList<>();
        Tally tally = track.start();
        for (int page : order) {
            ItemState before = track.state(about, tally);
            track.run(page, tally);
            ItemState after = track.state(about, tally);
            if (!after.equals(before)) {
                readings.add(new Reading(precedence.steps().get(page), after));
            }
        }
        return readings;
    }
}
