package counterstep.ledger;

import counterstep.ledger.Walk.Reached;
import counterstep.ledger.Witness.Reading;
import counterstep.links.Precedence;
import counterstep.model.Item;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether some of each of two items can lie on the mat at once. With two counters this is no cut;
 * the sets of the few steps that act on either are walked.
 */
final class Together {
    private final Deeds deeds;
    private final Precedence precedence;

    Together(Deeds deeds, Precedence precedence) {
        this.deeds = deeds;
        this.precedence = precedence;
    }

    /** The smallest set after which both lie there; readings are of the first of the two. */
    Optional<Witness> witness(Item one, Item other) {
        Track track = Track.of(deeds, List.of(one, other));
        Optional<Walk> walk = Walk.of(track, precedence, Walk.LIMIT);
        if (walk.isEmpty()) {
            return Optional.of(bound(one, other));
        }
        return walk.get().all().stream()
                .filter(at -> onMat(at, one) && onMat(at, other))
                .map(at -> pages(track, at))
                .min(Comparator.comparingInt(BitSet::cardinality))
                .map(pages -> precedence.order(pages, List.of()))
                .map(order -> witness(one, order, track, false));
    }

    private static boolean onMat(Reached at, Item item) {
        return at.tally().get(item.id(), Counter.ON_MAT) > 0;
    }

    private BitSet pages(Track track, Reached at) {
        BitSet pages = new BitSet();
        at.done().stream().map(track.pages()::get).forEach(pages::set);
        return precedence.closure(pages);
    }

    private Witness witness(Item one, List<Integer> order, Track track, boolean bound) {
        List<Reading> readings = new ArrayList<>();
        Tally tally = track.start();
        for (int page : order) {
            if (track.pages().contains(page)) {
                track.run(page, tally);
                readings.add(
                        new Reading(precedence.steps().get(page), track.state(one.id(), tally)));
            }
        }
        return new Witness(precedence.ids(order), Optional.empty(), one.id(), readings, bound);
    }

    /** Too much to walk: what must be done to take the first of each out. */
    private Witness bound(Item one, Item other) {
        BitSet pages = new BitSet();
        pages.set(deeds.acting(one.id()).first());
        pages.set(deeds.acting(other.id()).first());
        List<Integer> order = precedence.order(precedence.closure(pages), List.of());
        return witness(one, order, Track.of(deeds, List.of(one, other)), true);
    }
}
