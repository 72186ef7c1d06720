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
import counterstep.model.FastenerSet;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What is left on the mat is missing in the device. A part takes its holders with it. */
final class NeverPutBack implements Check {
    private static final Verb[] OFF = {Verb.REMOVE, Verb.MOVE_ASIDE};

    @Override
    public About about() {
        return new About(
                "never-put-back",
                Severity.ERROR,
                "Something that comes off is not in the device when all is done.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.endings().all(Remainder.NEVER_BACK).stream()
                .map(ending -> finding(facts, ending));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return DrawIt.fixes(facts, finding, Remainder.NEVER_BACK);
    }

    private Finding finding(Facts facts, Ending ending) {
        List<Happening> back =
                facts.ledger().happenings(ending.item(), Verb.REINSTALL, Verb.FIT_NEW, Verb.RETURN);
        List<StepId> steps = new ArrayList<>(facts.stepsOf(ending));
        back.forEach(happening -> steps.add(happening.step()));
        return about().finding(
                        sentence(facts, ending, back),
                        facts.placeFirst(steps.get(0), steps),
                        ending.items());
    }

    private static String sentence(Facts facts, Ending ending, List<Happening> back) {
        Phrases phrases = facts.phrases();
        Noun what = phrases.together(ending);
        boolean screws = facts.index().item(ending.item()) instanceof FastenerSet;
        String off = what.verb(" comes ", " come ") + (screws ? "out" : "off");
        String start = what.start() + off + " in " + phrases.steps(ending.steps());
        List<StepId> discarded = steps(facts.ledger().happenings(ending.item(), Verb.DISCARD));
        if (!discarded.isEmpty() && back.isEmpty()) {
            return start
                    + what.verb(", is", ", are")
                    + " thrown away in "
                    + phrases.steps(discarded)
                    + ", and no new one is fitted.";
        }
        String never = what.verb("goes ", "go ") + "back " + (screws ? "in" : "on");
        return start + " and never " + never + tooFew(facts, ending, back) + ".";
    }

    /** Says by the counts where too few go back, or more come out than there are. */
    private static String tooFew(Facts facts, Ending ending, List<Happening> back) {
        if (back.isEmpty()) {
            return "";
        }
        List<Happening> off = facts.ledger().happenings(ending.item(), OFF);
        boolean tooOften = count(off) > facts.index().item(ending.item()).quantity();
        String takes =
                tooOften
                        ? facts.phrases().steps(steps(off)) + " take off " + count(off) + ", "
                        : "";
        List<StepId> steps = steps(back);
        String put = steps.stream().distinct().count() == 1 ? " puts back " : " put back ";
        return ": " + takes + facts.phrases().steps(steps) + put + "only " + count(back);
    }

    private static int count(List<Happening> happenings) {
        return happenings.stream().mapToInt(happening -> happening.what().count()).sum();
    }

    private static List<StepId> steps(List<Happening> happenings) {
        return happenings.stream().map(Happening::step).toList();
    }
}
