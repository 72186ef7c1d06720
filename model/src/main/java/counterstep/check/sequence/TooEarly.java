package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.Turn;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is put back before the part that it belongs to; one fault while that part stays off. */
final class TooEarly {
    /** A part, and the step that puts it back next. */
    private record Awaited(ItemId part, Optional<StepId> back) {}

    private TooEarly() {}

    /** Holders before their part; leads that wait for the same return are told with them. */
    static Stream<Finding> holders(Facts facts, About about) {
        List<Failed> all = new ArrayList<>(facts.failures(FailureKind.SEAT));
        Set<Awaited> awaited = awaited(facts, all);
        facts.failures(FailureKind.LEAD).stream()
                .filter(failed -> awaited.contains(awaited(facts, failed)))
                .forEach(all::add);
        return findings(facts, about, all, "is on its place");
    }

    /** Leads before their part, where no holder waits for it too. */
    static Stream<Finding> leads(Facts facts, About about) {
        Set<Awaited> awaited = awaited(facts, facts.failures(FailureKind.SEAT));
        List<Failed> all =
                facts.failures(FailureKind.LEAD).stream()
                        .filter(failed -> !awaited.contains(awaited(facts, failed)))
                        .toList();
        return findings(facts, about, all, "is back");
    }

    private static Stream<Finding> findings(
            Facts facts, About about, List<Failed> failures, String ready) {
        return Failed.grouped(failures, failed -> awaited(facts, failed)).stream()
                .map(fault -> finding(facts, about, fault, ready));
    }

    private static Set<Awaited> awaited(Facts facts, List<Failed> failures) {
        return failures.stream().map(one -> awaited(facts, one)).collect(Collectors.toSet());
    }

    private static Awaited awaited(Facts facts, Failed failed) {
        Optional<StepId> back =
                facts.next(failed.about(), Turn.BACK, failed.place()).map(Happening::step);
        return new Awaited(failed.about(), back);
    }

    private static Finding finding(Facts facts, About about, List<Failed> fault, String ready) {
        Phrases phrases = facts.phrases();
        Awaited awaited = awaited(facts, fault.get(0));
        List<ItemId> early = fault.stream().map(Failed::item).distinct().toList();
        List<StepId> steps = new ArrayList<>(Failed.steps(fault));
        String message =
                phrases.steps(steps)
                        + (steps.size() == 1 ? " puts back " : " put back ")
                        + phrases.names(early)
                        + " before "
                        + phrases.name(awaited.part())
                        + " "
                        + ready
                        + awaited.back().map(step -> " in " + phrases.step(step)).orElse("")
                        + ".";
        awaited.back().ifPresent(steps::add);
        List<ItemId> items = new ArrayList<>(early);
        items.add(awaited.part());
        return about.finding(
                Phrases.sentence(message), facts.placeFirst(steps.get(0), steps), items);
    }
}
