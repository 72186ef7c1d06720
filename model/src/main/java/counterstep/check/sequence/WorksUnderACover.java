package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.Failure;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.Turn;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a part covers cannot be reached while that part is on. */
final class WorksUnderACover implements Check {
    /** A cover as it lies since the last time it was put on. */
    private record Lid(ItemId cover, int since) {}

    @Override
    public About about() {
        return new About(
                "works-under-a-cover",
                Severity.ERROR,
                "A step works on something while a part that covers it is still on.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<Integer, List<Failed>> actions =
                facts.failures(FailureKind.REACH).stream()
                        .filter(failed -> !closedOver(facts, failed))
                        .collect(
                                Collectors.groupingBy(
                                        Failed::place, TreeMap::new, Collectors.toList()));
        Map<Set<Lid>, List<Failed>> faults = new LinkedHashMap<>();
        for (List<Failed> action : actions.values()) {
            Set<Lid> lids = new HashSet<>();
            action.forEach(failed -> lids.add(lid(facts, failed)));
            faults.computeIfAbsent(lids, fresh -> new ArrayList<>()).addAll(action);
        }
        return faults.values().stream().map(fault -> finding(facts, fault));
    }

    private static Lid lid(Facts facts, Failed failed) {
        ItemId cover = failed.about();
        return new Lid(cover, facts.lastPlace(cover, Turn.BACK, failed.place()));
    }

    /** Then the fault is told where the cover goes on too early. */
    private static boolean closedOver(Facts facts, Failed failed) {
        int closing = lid(facts, failed).since();
        if (closing < 0) {
            return false;
        }
        List<Failure> failures = facts.ledger().happenings().get(closing).failures();
        return failures.stream()
                .filter(failure -> failure.kind() == FailureKind.CLOSE)
                .anyMatch(failure -> failure.about().equals(failed.item()));
    }

    private Finding finding(Facts facts, List<Failed> fault) {
        Phrases phrases = facts.phrases();
        List<ItemId> works = fault.stream().map(Failed::item).distinct().toList();
        Set<ItemId> covers =
                fault.stream()
                        .map(Failed::about)
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        Collection<StepId> steps = Failed.steps(fault);
        List<StepId> off = comesOff(facts, fault);
        String message =
                phrases.steps(steps)
                        + (steps.size() == 1 ? " works on " : " work on ")
                        + phrases.names(works)
                        + " while "
                        + phrases.names(covers)
                        + (covers.size() == 1 ? " is" : " are")
                        + " still on"
                        + (off.isEmpty() ? "." : ", off only in " + phrases.steps(off) + ".");
        List<StepId> all = new ArrayList<>(steps);
        all.addAll(off);
        List<ItemId> items = new ArrayList<>(works);
        items.addAll(covers);
        return about().finding(Phrases.sentence(message), facts.placeFirst(all.get(0), all), items);
    }

    private static List<StepId> comesOff(Facts facts, List<Failed> fault) {
        return fault.stream()
                .flatMap(one -> facts.next(one.about(), Turn.APART, one.place()).stream())
                .map(Happening::step)
                .distinct()
                .toList();
    }
}
