package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Ending;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
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
import java.util.Optional;
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

    /** Fewer go back; or, where all go back, all are taken off. */
    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return facts.endings().all(Remainder.TOO_MANY).stream()
                .filter(ending -> DrawIt.told(finding, ending))
                .flatMap(ending -> Stream.concat(moreOff(facts, ending), fewerBack(facts, ending)));
    }

    private static Stream<Fix> moreOff(Facts facts, Ending ending) {
        int size = facts.index().item(ending.item()).quantity();
        int back = count(facts, ending, Turn.BACK);
        return last(facts, ending, Turn.APART).stream()
                .filter(happening -> back == size)
                .map(off -> DrawIt.setTo(off, off.what().count() + ending.count()));
    }

    private static Stream<Fix> fewerBack(Facts facts, Ending ending) {
        return last(facts, ending, Turn.BACK).stream()
                .filter(back -> back.what().count() > ending.count())
                .map(back -> DrawIt.setTo(back, back.what().count() - ending.count()));
    }

    private static List<Happening> turns(Facts facts, Ending ending, Turn turn) {
        return facts.ledger().happenings(ending.item()).stream()
                .filter(happening -> Turn.of(happening.what().verb()) == turn)
                .toList();
    }

    private static Optional<Happening> last(Facts facts, Ending ending, Turn turn) {
        return turns(facts, ending, turn).stream().reduce((one, other) -> other);
    }

    private static int count(Facts facts, Ending ending, Turn turn) {
        return turns(facts, ending, turn).stream().mapToInt(one -> one.what().count()).sum();
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
