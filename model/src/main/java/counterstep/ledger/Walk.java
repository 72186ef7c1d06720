package counterstep.ledger;

import counterstep.links.Precedence;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that may have been done of a track at some moment, each with every state it can have
 * led to. The order inside such a set is kept, since it can matter: removing takes loose ones
 * first.
 */
final class Walk {
    /** Above so many the walk is given up and a bound is taken instead. */
    static final int LIMIT = 10_000;

    /**
     * One set with one state.
     *
     * @param done places in the track
     * @param tally the counters then
     * @param from what it was reached from; empty for the start
     * @param last the place done last; -1 for the start
     */
    record Reached(BitSet done, Tally tally, Optional<Reached> from, int last) {
        /** The places in the order in which they were done. */
        List<Integer> order() {
            List<Integer> order = new ArrayList<>();
            for (Reached at = this; at.from().isPresent(); at = at.from().get()) {
                order.add(0, at.last());
            }
            return order;
        }
    }

    private record Key(BitSet done, Tally tally) {}

    private final Track track;
    private final int limit;
    private final List<BitSet> needed = new ArrayList<>();
    private final List<Reached> all = new ArrayList<>();
    private boolean whole = true;

    private Walk(Track track, Precedence precedence, int limit) {
        this.track = track;
        this.limit = limit;
        for (int page : track.pages()) {
            needed.add(before(track, page, precedence));
        }
        Map<Key, Reached> level = new LinkedHashMap<>();
        Reached start = new Reached(new BitSet(), track.start(), Optional.empty(), -1);
        level.put(new Key(start.done(), start.tally()), start);
        while (!level.isEmpty() && whole) {
            all.addAll(level.values());
            whole = all.size() <= limit;
            level = next(level);
        }
    }

    /** Walks a track; empty if there is too much of it. */
    static Optional<Walk> of(Track track, Precedence precedence, int limit) {
        Walk walk = new Walk(track, precedence, limit);
        return walk.whole ? Optional.of(walk) : Optional.empty();
    }

    /** Which places of a track the links put before a page. */
    static BitSet before(Track track, int page, Precedence precedence) {
        BitSet before = new BitSet();
        for (int place = 0; place < track.pages().size(); place++) {
            if (precedence.before(track.pages().get(place), page)) {
                before.set(place);
            }
        }
        return before;
    }

    private Map<Key, Reached> next(Map<Key, Reached> level) {
        Map<Key, Reached> next = new LinkedHashMap<>();
        for (Reached here : level.values()) {
            for (int place = 0; place < needed.size() && next.size() <= limit; place++) {
                if (!here.done().get(place) && contains(here.done(), needed.get(place))) {
                    Reached there = step(here, place);
                    next.putIfAbsent(new Key(there.done(), there.tally()), there);
                }
            }
        }
        return next;
    }

    private Reached step(Reached here, int place) {
        BitSet done = (BitSet) here.done().clone();
        done.set(place);
        Tally tally = here.tally().copy();
        track.run(track.pages().get(place), tally);
        track.tidy(tally);
        return new Reached(done, tally, Optional.of(here), place);
    }

    private static boolean contains(BitSet whole, BitSet part) {
        BitSet rest = (BitSet) part.clone();
        rest.andNot(whole);
        return rest.isEmpty();
    }

    /** What can have been done when a page starts; smaller sets first. */
    List<Reached> startsOf(int page, Precedence precedence) {
        BitSet forced = before(track, page, precedence);
        BitSet barred = new BitSet();
        for (int place = 0; place < needed.size(); place++) {
            int other = track.pages().get(place);
            if (other == page || precedence.before(page, other)) {
                barred.set(place);
            }
        }
        return all.stream()
                .filter(one -> !one.done().intersects(barred) && contains(one.done(), forced))
                .toList();
    }

    /** Everything that was met, smaller sets first. */
    List<Reached> all() {
        return all;
    }

    /** What all can lead to. */
    List<Reached> ends() {
        return all.stream().filter(one -> one.done().cardinality() == needed.size()).toList();
    }
}
