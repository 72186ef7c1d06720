package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.ledger.FastenerState;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Fastener sets of the same looks, and which of them lie on the mat at once, easily mixed up. */
final class Mat {
    private final Facts facts;
    private final Map<ItemId, List<StepId>> steps;
    private final List<FastenerSet> sets;
    private final Clusters<ItemId> clusters = new Clusters<>();
    private final List<Pair> pairs = new ArrayList<>();

    /** Two that lie there together. */
    private record Pair(ItemId one, StepId after) {}

    /**
     * Sets that lie there together, or at least each with another.
     *
     * @param sets two or more
     * @param after the first step after which two of them do
     */
    record Pile(List<FastenerSet> sets, StepId after) {
        Pile {
            sets = List.copyOf(sets);
        }
    }

    Mat(Facts facts, Map<ItemId, List<StepId>> steps, List<FastenerSet> sets) {
        this.facts = facts;
        this.steps = steps;
        this.sets = sets;
        for (int place = 1; place < sets.size(); place++) {
            for (FastenerSet earlier : sets.subList(0, place)) {
                compare(earlier, sets.get(place));
            }
        }
    }

    private void compare(FastenerSet one, FastenerSet other) {
        if (LookAlike.confusing(one, other)) {
            firstTogether(one.id(), other.id())
                    .ifPresent(
                            after -> {
                                clusters.join(one.id(), other.id());
                                pairs.add(new Pair(one.id(), after));
                            });
        }
    }

    /** What lies there changes only by the steps that act on either. */
    private Optional<StepId> firstTogether(ItemId one, ItemId other) {
        return Stream.concat(steps.get(one).stream(), steps.get(other).stream())
                .filter(step -> lies(one, step) && lies(other, step))
                .min(Comparator.comparingInt(facts.index()::page));
    }

    private boolean lies(ItemId set, StepId after) {
        return facts.ledger().after(set, after) instanceof FastenerState state && state.onMat() > 0;
    }

    /** The piles in page order. */
    List<Pile> piles() {
        return clusters.among(sets.stream().map(FastenerSet::id).toList()).stream()
                .map(this::pile)
                .sorted(Comparator.comparingInt(pile -> facts.index().page(pile.after())))
                .toList();
    }

    private Pile pile(List<ItemId> ids) {
        StepId after =
                pairs.stream()
                        .filter(pair -> ids.contains(pair.one()))
                        .map(Pair::after)
                        .min(Comparator.comparingInt(facts.index()::page))
                        .orElseThrow();
        return new Pile(sets.stream().filter(set -> ids.contains(set.id())).toList(), after);
    }
}
