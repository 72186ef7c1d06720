package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Ending;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.check.Remainder;
import counterstep.ledger.Happening;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A source that is isolated has to come back; where a connector isolates it, left open tells. */
final class PowerNotRestored implements Check {
    @Override
    public About about() {
        return new About(
                "power-not-restored",
                Severity.ERROR,
                "An energy source is still isolated when all is done.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.endings().all(Remainder.NO_POWER).stream()
                .map(ending -> finding(facts, ending));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return DrawIt.fixes(facts, finding, Remainder.NO_POWER);
    }

    private Finding finding(Facts facts, Ending ending) {
        List<StepId> restored =
                facts.ledger().happenings(ending.item(), Verb.RESTORE_POWER).stream()
                        .map(Happening::step)
                        .toList();
        String message =
                facts.phrases().name(ending.item())
                        + " is isolated in "
                        + facts.phrases().steps(ending.steps())
                        + (restored.isEmpty()
                                ? " and never restored."
                                : " and restored only in " + facts.phrases().steps(restored) + ".");
        List<StepId> steps = new ArrayList<>(facts.stepsOf(ending));
        steps.addAll(restored);
        return about().finding(
                        Phrases.sentence(message),
                        facts.placeFirst(steps.get(0), steps),
                        ending.items());
    }
}
