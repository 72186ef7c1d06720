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

/** Fasteners left finger-tight work themselves out in use (common practice). */
final class LeftLoose implements Check {
    @Override
    public About about() {
        return new About(
                "left-loose", Severity.ERROR, "A fastener is still loose when all is done.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.endings().all(Remainder.LOOSE).stream().map(ending -> finding(facts, ending));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return DrawIt.fixes(facts, finding, Remainder.LOOSE);
    }

    private Finding finding(Facts facts, Ending ending) {
        Noun what = facts.phrases().some(ending.item(), ending.count());
        String message =
                what.start()
                        + what.verb(" is", " are")
                        + " left loose in "
                        + facts.phrases().steps(ending.steps())
                        + " and never tightened.";
        return about().finding(message, facts.stepsOf(ending), ending.items());
    }
}
