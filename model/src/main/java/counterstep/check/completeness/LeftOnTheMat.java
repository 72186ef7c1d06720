package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.ledger.FastenerState;
import counterstep.ledger.Happening;
import counterstep.ledger.ItemState;
import counterstep.ledger.PartState;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.stream.Stream;

/** A new one is fitted, and nobody says where the old one goes: it may be mistaken for the new. */
final class LeftOnTheMat implements Check {
    @Override
    public About about() {
        return new About(
                "left-on-the-mat",
                Severity.ERROR,
                "A new one is in, and the old one still lies on the mat when all is done.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().items().stream()
                .filter(item -> left(facts.ledger().atEnd(item.id())) > 0)
                .map(item -> finding(facts, item));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        ItemId item = finding.items().get(0);
        int count = left(facts.ledger().atEnd(item));
        return facts.ledger().happenings(item, Verb.FIT_NEW).stream()
                .map(fitted -> new DiscardOld(fitted.step(), item, count))
                .map(edit -> new Fix(edit.name(), edit));
    }

    /** What is missing as well is told as never put back. */
    private static int left(ItemState state) {
        if (state instanceof FastenerState set) {
            return set.onMat() - Math.max(0, set.missing());
        }
        return state instanceof PartState part ? part.onMat() - Math.max(0, part.away()) : 0;
    }

    private Finding finding(Facts facts, Item item) {
        int count = left(facts.ledger().atEnd(item.id()));
        List<StepId> fitted =
                facts.ledger().happenings(item.id(), Verb.FIT_NEW).stream()
                        .map(Happening::step)
                        .toList();
        List<StepId> removed =
                facts.ledger().happenings(item.id(), Verb.REMOVE, Verb.TAKE_AWAY).stream()
                        .map(Happening::step)
                        .toList();
        String message =
                facts.phrases().counted(item.id(), count)
                        + (count == 1 ? ", old, stays" : ", old, stay")
                        + " on the mat: new in "
                        + facts.phrases().steps(fitted)
                        + ", and no step throws the old away.";
        List<StepId> steps = Stream.concat(fitted.stream(), removed.stream()).toList();
        return about().finding(Phrases.sentence(message), steps, List.of(item.id()));
    }
}
