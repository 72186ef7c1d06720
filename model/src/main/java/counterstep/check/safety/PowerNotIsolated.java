package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.FailureKind;
import counterstep.ledger.SourceState;
import counterstep.model.EnergySource;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a source feeds is touched only when the source is isolated, has been waited for, and is
 * proved dead where it asks for that; the isolating action itself may touch it.
 */
final class PowerNotIsolated implements Check {
    /** A source that is at fault, and whether it is live or only not proved dead. */
    private record Danger(ItemId source, boolean live) {}

    @Override
    public About about() {
        return new About(
                "power-not-isolated",
                Severity.ERROR,
                "Something is touched before the power that feeds it is isolated.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        List<Failed> failures =
                facts.failures(FailureKind.ENERGY).stream()
                        .filter(failed -> !PowerRestoredTooEarly.tells(facts, failed))
                        .toList();
        return Failed.grouped(failures, failed -> danger(facts, failed)).stream()
                .map(fault -> finding(facts, fault));
    }

    /** Sources that hang on one another and are live together are one fault. */
    private static Danger danger(Facts facts, Failed failed) {
        boolean live = failed.failure().state() == SourceState.LIVE;
        EnergySource source = (EnergySource) facts.index().item(failed.about());
        return new Danger(live ? facts.ledger().root(source).id() : source.id(), live);
    }

    private Finding finding(Facts facts, List<Failed> fault) {
        Phrases phrases = facts.phrases();
        Failed first = fault.get(0);
        Danger danger = danger(facts, first);
        List<ItemId> touched = fault.stream().map(Failed::item).distinct().toList();
        List<StepId> later = mended(facts, danger, first.place());
        String message =
                phrases.step(first.step())
                        + " touches "
                        + phrases.name(first.item())
                        + " while "
                        + phrases.name(danger.source())
                        + (danger.live() ? " is live" : " is " + unproved(facts, danger))
                        + (later.isEmpty()
                                ? "; no step before it does that."
                                : "; " + phrases.step(later.get(0)) + " comes too late.");
        List<StepId> steps = new ArrayList<>(Failed.steps(fault));
        steps.addAll(later);
        List<ItemId> items = new ArrayList<>(List.of(danger.source()));
        items.addAll(touched);
        return about().finding(
                        Phrases.sentence(message.replace("does that", does(danger))),
                        facts.placeFirst(first.step(), steps),
                        items);
    }

    private static String does(Danger danger) {
        return danger.live() ? "isolates it" : "waits and proves it";
    }

    private static String unproved(Facts facts, Danger danger) {
        EnergySource source = (EnergySource) facts.index().item(danger.source());
        return source.mustProveDead()
                ? "isolated but not proved dead"
                : "isolated for less than " + source.waitSeconds() + " s";
    }

    /** The step that does it at last: isolates the source, or proves it dead. */
    private static List<StepId> mended(Facts facts, Danger danger, int after) {
        EnergySource source = (EnergySource) facts.index().item(danger.source());
        Stream<Integer> places =
                danger.live()
                        ? facts.ledger().history(source).isolated().stream()
                        : proofs(facts, danger.source());
        return places.filter(place -> place > after)
                .limit(1)
                .map(place -> facts.ledger().happenings().get(place).step())
                .toList();
    }

    private static Stream<Integer> proofs(Facts facts, ItemId source) {
        return facts.ledger().happenings(source, Verb.PROVE_DEAD).stream()
                .map(facts.ledger().happenings()::indexOf);
    }
}
