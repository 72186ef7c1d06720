package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.Ledger;
import counterstep.ledger.Turn;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a cover hides must be finished when it goes on. What is never finished is told by its own
 * check, and work under the cover afterwards by this one.
 */
final class ClosedOverUnfinished implements Check {
    @Override
    public About about() {
        return new About(
                "closed-over-unfinished",
                Severity.ERROR,
                "A cover goes on over something that is finished only later.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<Integer, List<Failed>> faults = new LinkedHashMap<>();
        Map<ItemId, Failed> first = new LinkedHashMap<>();
        for (Failed failed : facts.failures(FailureKind.CLOSE)) {
            Failed earlier = first.get(failed.about());
            if (earlier == null || finishedBetween(facts.ledger(), earlier, failed)) {
                first.put(failed.about(), failed);
                earlier = failed;
            }
            faults.computeIfAbsent(earlier.place(), fresh -> new ArrayList<>()).add(failed);
        }
        return faults.values().stream().map(fault -> finding(facts, fault));
    }

    private static boolean finishedBetween(Ledger ledger, Failed earlier, Failed later) {
        return ledger.happenings().subList(earlier.place(), later.place()).stream()
                .filter(one -> one.what().item().filter(later.about()::equals).isPresent())
                .anyMatch(one -> one.after().finished());
    }

    private Finding finding(Facts facts, List<Failed> fault) {
        Phrases phrases = facts.phrases();
        Failed closing = fault.get(0);
        List<Failed> open = fault.stream().filter(one -> one.place() == closing.place()).toList();
        List<String> states = open.stream().map(one -> state(facts, one)).distinct().toList();
        List<StepId> later =
                open.stream()
                        .flatMap(one -> facts.next(one.about(), Turn.BACK, one.place()).stream())
                        .map(Happening::step)
                        .distinct()
                        .toList();
        String message =
                phrases.name(closing.item())
                        + " goes on in "
                        + phrases.step(closing.step())
                        + " over "
                        + Phrases.list(states)
                        + (later.isEmpty()
                                ? "."
                                : ", finished only in " + phrases.steps(later) + ".");
        List<StepId> steps = new ArrayList<>(Failed.steps(fault));
        steps.addAll(later);
        List<ItemId> items = new ArrayList<>(fault.stream().map(Failed::about).toList());
        items.add(closing.item());
        return about().finding(
                        Phrases.sentence(message), facts.placeFirst(closing.step(), steps), items);
    }

    private static String state(Facts facts, Failed one) {
        String state = Phrases.unfinished(facts.index().item(one.about()), one.failure().state());
        return facts.phrases().name(one.about()) + " (still " + state + ")";
    }
}
