package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Ending;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Noun;
import counterstep.check.Remainder;
import counterstep.model.Severity;
import java.util.stream.Stream;

/** A part moved aside with its leads on has to return to its place. */
final class LeftAside implements Check {
    @Override
    public About about() {
        return new About(
                "left-aside", Severity.ERROR, "A part is still beside its place when all is done.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.endings().all(Remainder.ASIDE).stream().map(ending -> finding(facts, ending));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return DrawIt.fixes(facts, finding, Remainder.ASIDE);
    }

    private Finding finding(Facts facts, Ending ending) {
        Noun part = facts.phrases().some(ending.item(), ending.count());
        String others =
                ending.with().isEmpty()
                        ? ""
                        : "; its " + facts.phrases().others(ending) + " stay off with it";
        String message =
                part.start()
                        + part.verb(" is", " are")
                        + " left aside in "
                        + facts.phrases().steps(ending.steps())
                        + " and never returned"
                        + others
                        + ".";
        return about().finding(message, facts.stepsOf(ending), ending.items());
    }
}
