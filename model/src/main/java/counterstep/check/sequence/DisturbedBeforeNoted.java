package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.edit.Edits;
import counterstep.edit.FreshIds;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.mirror.DrawCounterstep;
import counterstep.mirror.NoteFirst;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A value is noted before anything it belongs to is loosened or taken off; then it is gone. */
final class DisturbedBeforeNoted implements Check {
    @Override
    public About about() {
        return new About(
                "disturbed-before-noted",
                Severity.ERROR,
                "A setting is disturbed before its value is noted.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return Failed.grouped(facts.failures(FailureKind.NOTE), Failed::about).stream()
                .filter(fault -> !restoredWithoutNote(facts, fault.get(0).about()))
                .map(fault -> finding(facts, fault));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        ItemId setting = finding.items().get(0);
        NoteFirst note = new NoteFirst(setting);
        if (!steps(facts, setting, Verb.NOTE).isEmpty()) {
            return Stream.of(new Fix(note.name(), note));
        }
        DrawCounterstep restore = new DrawCounterstep(Set.of(FreshIds.step(facts.procedure())));
        return Stream.of(new Fix(note.name(), new Edits(note.name(), List.of(note, restore))));
    }

    private static boolean restoredWithoutNote(Facts facts, ItemId setting) {
        return steps(facts, setting, Verb.NOTE).isEmpty()
                && !steps(facts, setting, Verb.RESTORE).isEmpty();
    }

    private static List<StepId> steps(Facts facts, ItemId setting, Verb verb) {
        return facts.ledger().happenings(setting, verb).stream().map(Happening::step).toList();
    }

    private Finding finding(Facts facts, List<Failed> fault) {
        Failed first = fault.get(0);
        List<StepId> noted = steps(facts, first.about(), Verb.NOTE);
        String message =
                facts.phrases().name(first.about())
                        + " is disturbed in "
                        + facts.phrases().step(first.step())
                        + (noted.isEmpty()
                                ? " and never noted or restored."
                                : ", before "
                                        + facts.phrases().steps(noted)
                                        + (noted.size() == 1 ? " notes it." : " note it."));
        List<StepId> steps = new ArrayList<>(Failed.steps(fault));
        steps.addAll(noted);
        return about().finding(
                        Phrases.sentence(message),
                        facts.placeFirst(first.step(), steps),
                        List.of(first.about(), first.item()));
    }
}
