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
import counterstep.ledger.OpenState;
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
        String message = apart.isEmpty() ? nothingOff(facts, ending) : tooFew(facts, ending, apart);
        return about().finding(
                        Phrases.sentence(message),
                        facts.placeFirst(steps.get(0), steps),
                        ending.items());
    }

    private static String nothingOff(Facts facts, Ending ending) {
        Noun what = facts.phrases().together(ending);
        boolean opens = facts.ledger().atEnd(ending.item()) instanceof OpenState;
        String back =
                opens
                        ? what.verb(" is closed", " are closed")
                        : what.verb(" goes back", " go back");
        String them = what.verb("it", "them");
        return what.text()
                + back
                + " in "
                + facts.phrases().steps(ending.steps())
                + ", but no step "
                + (opens ? "opens " + them : "takes " + them + " off")
                + " before.";
    }

    private static String tooFew(Facts facts, Ending ending, List<StepId> apart) {
        return facts.phrases().name(ending.item())
                + ": "
                + facts.phrases().steps(ending.steps())
                + (ending.steps().size() == 1 ? " puts back " : " put back ")
                + ending.count()
                + " more than "
                + facts.phrases().steps(apart)
                + (apart.size() == 1 ? " takes off." : " take off.");
    }

    private static List<StepId> apart(Facts facts, Ending ending) {
        return facts.ledger().happenings(ending.item()).stream()
                .filter(happening -> Turn.of(happening.what().verb()) == Turn.APART)
                .map(Happening::step)
                .distinct()
                .toList();
    }
}
