package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.SourceState;
import counterstep.model.EnergySource;
import counterstep.model.Severity;
import counterstep.model.SourceKind;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.List;
import java.util.stream.Stream;

/**
 * A strap ties the technician to ground: never while the mains is on (from memory). The resistor in
 * its cord is for faults, not for work.
 */
final class StrapOnLiveMains implements Check {
    @Override
    public About about() {
        return new About(
                "strap-on-live-mains",
                Severity.DOUBT,
                "A strap that ties somebody to ground is worn while the mains is on.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        List<EnergySource> mains =
                facts.procedure().items().stream()
                        .filter(EnergySource.class::isInstance)
                        .map(EnergySource.class::cast)
                        .filter(source -> source.kind() == SourceKind.MAINS)
                        .toList();
        StaticWork work = StaticWork.of(facts);
        List<Step> strapped =
                mains.isEmpty()
                        ? List.of()
                        : facts.procedure().steps().stream().filter(work::usesTool).toList();
        return mains.stream().flatMap(source -> finding(facts, source, strapped));
    }

    private Stream<Finding> finding(Facts facts, EnergySource source, List<Step> strapped) {
        List<StepId> steps =
                strapped.stream().map(Step::id).filter(step -> live(facts, source, step)).toList();
        if (steps.isEmpty()) {
            return Stream.empty();
        }
        String message =
                "%s %s an antistatic tool while %s is on."
                        .formatted(
                                facts.phrases().steps(steps),
                                steps.size() == 1 ? "uses" : "use",
                                source.name());
        return Stream.of(about().finding(Phrases.sentence(message), steps, List.of(source.id())));
    }

    /** Live all through: a step that isolates it first and straps then is right. */
    private static boolean live(Facts facts, EnergySource source, StepId step) {
        return facts.ledger().after(source.id(), step) == SourceState.LIVE;
    }
}
