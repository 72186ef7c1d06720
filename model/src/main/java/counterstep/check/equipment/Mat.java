package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.ledger.FastenerState;
import counterstep.ledger.Witness;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/**
 * Fastener sets of the same looks, and which of them lie on the mat at once, easily mixed up: as
 * the page goes, and of those that it keeps apart, in some other order that the links allow.
 */
final class Mat {
    private final Facts facts;
    private final Map<ItemId, List<StepId>> steps;
    private final List<FastenerSet> sets;
    private final Clusters<ItemId> onThePage = new Clusters<>();
    private final Clusters<ItemId> inSomeOrder = new Clusters<>();
    private final List<Pair> pairs = new ArrayList<>();
    private final List<Pair> others = new ArrayList<>();

    /** Two that lie there together after a step, in the order of a witness where there is one. */
    private record Pair(ItemId one, StepId after, Optional<Witness> witness) {}

    /**
     * Sets that lie there together, or at least each with another.
     *
     * @param sets two or more
     * @param after the first step after which two of them do
     * @param witness an order in which they do; empty where page order does
     */
    record Pile(List<FastenerSet> sets, StepId after, Optional<Witness> witness) {
        Pile {
            sets = List.copyOf(sets);
        }
    }

    Mat(Facts facts, Map<ItemId, List<StepId>> steps, List<FastenerSet> sets) {
        this.facts = facts;
        this.steps = steps;
        this.sets = sets;
        eachConfusing(this::compareOnThePage);
        eachConfusing(this::compareInSomeOrder);
    }

    private void eachConfusing(BiConsumer<ItemId, ItemId> pair) {
        for (int place = 1; place < sets.size(); place++) {
            for (FastenerSet earlier : sets.subList(0, place)) {
                if (LookAlike.confusing(earlier, sets.get(place))) {
                    pair.accept(earlier.id(), sets.get(place).id());
                }
            }
        }
    }

    private void compareOnThePage(ItemId one, ItemId other) {
        firstTogether(one, other)
                .ifPresent(
                        after -> {
                            onThePage.join(one, other);
                            pairs.add(new Pair(one, after, Optional.empty()));
                        });
    }

    private void compareInSomeOrder(ItemId one, ItemId other) {
        if (onThePage.joined(one, other) || inSomeOrder.joined(one, other)) {
            return;
        }
        facts.everyOrder()
                .together(one, other)
                .ifPresent(
                        witness -> {
                            inSomeOrder.join(one, other);
                            List<StepId> first = witness.first();
                            StepId last = first.get(first.size() - 1);
                            others.add(new Pair(one, last, Optional.of(witness)));
                        });
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

    /** The piles: first those of the page, each in page order. */
    List<Pile> piles() {
        return Stream.concat(piles(onThePage, pairs), piles(inSomeOrder, others)).toList();
    }

    private Stream<Pile> piles(Clusters<ItemId> clusters, List<Pair> joined) {
        return clusters.among(sets.stream().map(FastenerSet::id).toList()).stream()
                .map(ids -> pile(ids, joined))
                .sorted(Comparator.comparingInt(pile -> facts.index().page(pile.after())));
    }

    private Pile pile(List<ItemId> ids, List<Pair> joined) {
        Pair first =
                joined.stream()
                        .filter(pair -> ids.contains(pair.one()))
                        .min(Comparator.comparingInt(pair -> facts.index().page(pair.after())))
                        .orElseThrow();
        List<FastenerSet> pile = sets.stream().filter(set -> ids.contains(set.id())).toList();
        return new Pile(pile, first.after(), first.witness());
    }
}
