package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.Happening;
import counterstep.ledger.SupplyHistory;
import counterstep.model.EnergySource;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Power comes back after the last work on what it feeds; before that only in a pair that is marked
 * as a powered test.
 */
final class PowerRestoredTooEarly implements Check {
    /** What comes back by one action, and is worked on afterwards. */
    private record Fault(Collection<ItemId> sources, Collection<Integer> touches) {
        static Fault none() {
            return new Fault(new LinkedHashSet<>(), new LinkedHashSet<>());
        }
    }

    @Override
    public About about() {
        return new About(
                "power-restored-too-early",
                Severity.ERROR,
                "Power comes back before the last work on what it feeds.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<Integer, Fault> faults = new TreeMap<>();
        for (EnergySource source : sources(facts)) {
            SupplyHistory history = facts.ledger().history(source);
            for (int touch : history.touches()) {
                restored(facts, history, touch)
                        .forEach(
                                place -> {
                                    Fault fault =
                                            faults.computeIfAbsent(place, fresh -> Fault.none());
                                    fault.sources().add(source.id());
                                    fault.touches().add(touch);
                                });
            }
        }
        return faults.entrySet().stream()
                .map(fault -> finding(facts, fault.getKey(), fault.getValue()));
    }

    private static List<EnergySource> sources(Facts facts) {
        return facts.procedure().items().stream()
                .filter(item -> item instanceof EnergySource)
                .map(item -> (EnergySource) item)
                .toList();
    }

    /** Whether that failure is of power that had been isolated and came back unmarked. */
    static boolean tells(Facts facts, Failed failed) {
        EnergySource source = (EnergySource) facts.index().item(failed.about());
        SupplyHistory history = facts.ledger().history(source);
        boolean isolatedSince =
                history.isolated().stream()
                        .anyMatch(
                                place ->
                                        place < failed.place()
                                                && place > latest(history, failed.place()));
        return !isolatedSince && restored(facts, history, failed.place()).findAny().isPresent();
    }

    private static int latest(SupplyHistory history, int touch) {
        return history.restored().stream()
                .filter(place -> place < touch)
                .reduce(-1, (first, second) -> second);
    }

    /** The latest restoring before a touch, unless it is marked as a powered test. */
    private static IntStream restored(Facts facts, SupplyHistory history, int touch) {
        int place = latest(history, touch);
        boolean marked = place >= 0 && facts.ledger().happenings().get(place).what().poweredTest();
        return place < 0 || marked ? IntStream.empty() : IntStream.of(place);
    }

    private Finding finding(Facts facts, int place, Fault fault) {
        Phrases phrases = facts.phrases();
        Happening restoring = facts.ledger().happenings().get(place);
        List<Happening> touching =
                fault.touches().stream().sorted().map(facts.ledger().happenings()::get).toList();
        List<StepId> later = touching.stream().map(Happening::step).distinct().toList();
        List<ItemId> touched =
                touching.stream().flatMap(one -> one.what().item().stream()).distinct().toList();
        String message =
                "power of "
                        + phrases.names(fault.sources())
                        + " comes back in "
                        + phrases.step(restoring.step())
                        + ", but "
                        + phrases.steps(later)
                        + (later.size() == 1 ? " still works on " : " still work on ")
                        + phrases.names(touched)
                        + ".";
        List<ItemId> items = new ArrayList<>(fault.sources());
        items.addAll(touched);
        return about().finding(
                        Phrases.sentence(message),
                        facts.placeFirst(restoring.step(), later),
                        items);
    }
}
