package counterstep.cli;

import counterstep.model.Index;
import counterstep.model.Severity;
import counterstep.reach.LeftOut;
import counterstep.reach.Reach;
import counterstep.review.Review;
import java.util.ArrayList;
import java.util.List;

/** The steps to some parts as people read them: how many, and what was left out and why. */
final class ReachText {
    private ReachText() {}

    static List<String> of(Reach reach) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        long errors = Review.of(reach.procedure()).count(Severity.ERROR);
        lines.add(
                Plain.line(
                        "%s. All checks run on these: %s."
                                .formatted(reach.summary(), Amount.of(errors, "error"))));
        if (!reach.leftOut().isEmpty()) {
            lines.add("Left out, by the numbers of the whole:");
        }
        Index whole = Index.of(reach.whole());
        for (LeftOut left : reach.leftOut()) {
            lines.add(
                    "%4d  %s: %s."
                            .formatted(
                                    whole.number(left.step()),
                                    Plain.line(whole.step(left.step()).title()),
                                    Plain.line(left.reason())));
        }
        return lines;
    }
}
