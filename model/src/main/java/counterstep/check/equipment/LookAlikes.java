package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.ledger.FastenerState;
import counterstep.ledger.Happening;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Fastener sets that look alike and lie on the mat at once get mixed up; a long screw in a short
 * hole pierces what is below it. Sets that are really alike may be.
 */
final class LookAlikes implements Check {
    @Override
    public About about() {
        return new About(
                "look-alikes",
                Severity.DOUBT,
                "Fasteners that differ only in length lie on the mat at once, in no trays of their"
                        + " own.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<ItemId, List<StepId>> steps = steps(facts);
        return byLooks(facts, steps).stream()
                .flatMap(sets -> new Mat(facts, steps, sets).piles().stream())
                .map(pile -> finding(facts, pile));
    }

    /** The steps that act on each fastener set. */
    private static Map<ItemId, List<StepId>> steps(Facts facts) {
        return facts.ledger().happenings().stream()
                .filter(happening -> happening.after() instanceof FastenerState)
                .collect(
                        Collectors.groupingBy(
                                happening -> happening.what().item().orElseThrow(),
                                Collectors.mapping(Happening::step, Collectors.toList())));
    }

    /** Sets that look alike and of which some come out. */
    private static Collection<List<FastenerSet>> byLooks(
            Facts facts, Map<ItemId, List<StepId>> steps) {
        Map<LookAlike, List<FastenerSet>> groups = new LinkedHashMap<>();
        facts.procedure().items().stream()
                .filter(FastenerSet.class::isInstance)
                .map(FastenerSet.class::cast)
                .filter(set -> steps.containsKey(set.id()))
                .forEach(
                        set ->
                                LookAlike.of(set)
                                        .ifPresent(
                                                looks ->
                                                        groups.computeIfAbsent(
                                                                        looks,
                                                                        fresh -> new ArrayList<>())
                                                                .add(set)));
        return groups.values();
    }

    private Finding finding(Facts facts, Mat.Pile pile) {
        List<String> sizes = pile.sets().stream().map(LookAlikes::sized).toList();
        String message =
                "After %s %s lie on the mat, alike but for their length and in no trays of their own."
                        .formatted(facts.phrases().step(pile.after()), Phrases.list(sizes));
        List<ItemId> items = pile.sets().stream().map(FastenerSet::id).toList();
        List<StepId> out = items.stream().flatMap(id -> facts.ledger().offAt(id).stream()).toList();
        Finding finding = about().finding(message, facts.placeFirst(pile.after(), out), items);
        return pile.witness().map(finding::inOrder).orElse(finding);
    }

    /** 'long shell screws (K2 × 8)'. */
    private static String sized(FastenerSet set) {
        String length = set.length().isPresent() ? "" : ", length not stated";
        return set.name() + " (" + set.size() + length + ")";
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return Stream.of(new Fix("Name trays", TrayNames.of(facts, finding.items())));
    }
}
