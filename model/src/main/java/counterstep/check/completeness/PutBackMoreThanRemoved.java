package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Ending;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Noun;
import counterstep.check.Phrases;
import counterstep.check.Remainder;
import counterstep.ledger.Happening;
import counterstep.ledger.Turn;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What goes back without having come off: a removal is not written, or a count is wrong. */
final class PutBackMoreThanRemoved implements Check {
    @Override
    public About about() {
        return new About(
                "put-back-more-than-removed",
                Severity.ERROR,
                "More is put back or closed than was taken off or opened.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.endings().all(Remainder.TOO_MANY).stream()
                .map(ending -> finding(facts, ending));
    }

    private Finding finding(Facts facts, Ending ending) {
        List<StepId> apart = apart(facts, ending);
        List<StepId> steps = new ArrayList<>(facts.stepsOf(ending));
        steps.addAll(apart);
        Noun what = facts.phrases().together(ending);
        String message =
                apart.isEmpty()
                        ? what.start()
                                + what.verb(" goes", " go")
                                + " back in "
                                + facts.phrases().steps(ending.steps())
                                + ", but no step takes "
                                + what.verb("it", "them")
                                + " off before."
                        : facts.phrases().name(ending.item())
                                + ": "
                                + facts.phrases().steps(ending.steps())
                                + " puts back "
                                + ending.count()
                                + " more than "
                                + facts.phrases().steps(apart)
                                + (apart.size() == 1 ? " takes off." : " take off.");
        return about().finding(
                        Phrases.sentence(message),
                        facts.placeFirst(steps.get(0), steps),
                        ending.items());
    }

    private static List<StepId> apart(Facts facts, Ending ending) {
        return facts.ledger().happenings(ending.item()).stream()
                .filter(happening -> Turn.of(happening.what().verb()) == Turn.APART)
                .map(Happening::step)
                .toList();
    }
}
