package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Noun;
import counterstep.check.Phrases;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.Turn;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Parts that leave before what keeps them lets go; one fault an action. */
final class StillFast {
    private StillFast() {}

    /** Parts still held; what tethers them in the same action is told with it. */
    static Stream<Finding> held(Facts facts, About about) {
        List<Failed> all = new ArrayList<>(facts.failures(FailureKind.HOLD));
        Set<Integer> held = places(all);
        facts.failures(FailureKind.TETHER).stream()
                .filter(failed -> held.contains(failed.place()))
                .forEach(all::add);
        return findings(facts, about, all, " holds it", " hold it");
    }

    /** Parts that nothing holds any more, but that are still tethered. */
    static Stream<Finding> tethered(Facts facts, About about) {
        Set<Integer> held = places(facts.failures(FailureKind.HOLD));
        List<Failed> all =
                facts.failures(FailureKind.TETHER).stream()
                        .filter(failed -> !held.contains(failed.place()))
                        .toList();
        return findings(facts, about, all, " tethers it", " tether it");
    }

    private static Set<Integer> places(List<Failed> failures) {
        return failures.stream().map(Failed::place).collect(Collectors.toSet());
    }

    private static Stream<Finding> findings(
            Facts facts, About about, List<Failed> failures, String one, String many) {
        return Failed.grouped(failures, Failed::place).stream()
                .map(fault -> finding(facts, about, fault, one, many));
    }

    private static Finding finding(
            Facts facts, About about, List<Failed> fault, String one, String many) {
        Failed leaving = fault.get(0);
        Phrases phrases = facts.phrases();
        List<Noun> keepers = fault.stream().map(failed -> keeper(phrases, failed)).toList();
        boolean plural = keepers.size() > 1 || keepers.get(0).plural();
        List<StepId> later =
                fault.stream()
                        .flatMap(f -> facts.next(f.about(), Turn.APART, f.place()).stream())
                        .map(Happening::step)
                        .distinct()
                        .toList();
        String message =
                phrases.name(leaving.item())
                        + " leaves in "
                        + phrases.step(leaving.step())
                        + ", but "
                        + Phrases.list(keepers.stream().map(Noun::text).toList())
                        + " still"
                        + (plural ? many : one)
                        + (later.isEmpty() ? "." : " until " + phrases.steps(later) + ".");
        List<StepId> steps = new ArrayList<>(later);
        List<ItemId> items = new ArrayList<>(List.of(leaving.item()));
        fault.forEach(failed -> items.add(failed.about()));
        return about.finding(
                Phrases.sentence(message), facts.placeFirst(leaving.step(), steps), items);
    }

    private static Noun keeper(Phrases phrases, Failed failed) {
        int still = failed.failure().needed() - failed.failure().found();
        return phrases.some(failed.about(), still);
    }
}
