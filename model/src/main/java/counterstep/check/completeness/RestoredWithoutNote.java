package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.mirror.NoteFirst;
import counterstep.model.Item;
import counterstep.model.Setting;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Nobody can set a value again that nobody wrote down. */
final class RestoredWithoutNote implements Check {
    @Override
    public About about() {
        return new About(
                "restored-without-note",
                Severity.ERROR,
                "A setting is to be restored, but its value is never noted.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().items().stream()
                .filter(item -> item instanceof Setting)
                .filter(item -> with(facts, item, Verb.NOTE).isEmpty())
                .filter(item -> !with(facts, item, Verb.RESTORE).isEmpty())
                .map(item -> finding(facts, item));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        NoteFirst note = new NoteFirst(finding.items().get(0));
        return Stream.of(new Fix(note.name(), note));
    }

    private Finding finding(Facts facts, Item item) {
        List<StepId> restored = with(facts, item, Verb.RESTORE);
        List<StepId> steps = new ArrayList<>(restored);
        facts.allFailures(FailureKind.NOTE).stream()
                .filter(failed -> failed.about().equals(item.id()))
                .forEach(failed -> steps.add(failed.step()));
        String message =
                item.name()
                        + " is restored in "
                        + facts.phrases().steps(restored)
                        + ", but no step notes it before.";
        return about().finding(
                        Phrases.sentence(message),
                        facts.placeFirst(steps.get(0), steps),
                        List.of(item.id()));
    }

    private static List<StepId> with(Facts facts, Item item, Verb verb) {
        return facts.ledger().happenings(item.id(), verb).stream().map(Happening::step).toList();
    }
}
