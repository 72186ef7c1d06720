package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Ending;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Noun;
import counterstep.check.Remainder;
import counterstep.ledger.JointState;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Severity;
import counterstep.model.Tie;
import java.util.stream.Stream;

/** A clip, connector, tie or joint that is opened and not closed again. */
final class LeftOpen implements Check {
    @Override
    public About about() {
        return new About(
                "left-open",
                Severity.ERROR,
                "A clip, connector, tie or joint is still open when all is done.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.endings().all(Remainder.OPEN).stream().map(ending -> finding(facts, ending));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return DrawIt.fixes(facts, finding, Remainder.OPEN);
    }

    private Finding finding(Facts facts, Ending ending) {
        Noun what = facts.phrases().some(ending.item(), ending.count());
        String message =
                what.start()
                        + what.verb(" is ", " are ")
                        + fate(facts, ending, facts.phrases().steps(ending.steps()));
        return about().finding(message, facts.stepsOf(ending), ending.items());
    }

    private static String fate(Facts facts, Ending ending, String steps) {
        Item item = facts.index().item(ending.item());
        if (item instanceof Tie) {
            return "cut in " + steps + " and no new one is fitted.";
        }
        if (item instanceof Joint) {
            boolean laid = JointState.LAID.equals(facts.ledger().atEnd(item.id()));
            return "released in "
                    + steps
                    + (laid ? ", laid and never pressed." : " and never made again.");
        }
        return "opened in " + steps + " and never closed again.";
    }
}
