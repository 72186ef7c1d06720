package counterstep.testing;

import counterstep.check.Finding;
import counterstep.model.Procedure;
import counterstep.review.Review;
import java.util.List;

/** What all checks find in a procedure, one line a finding, so that a test sees one fault once. */
public final class Found {
    private Found() {}

    /** Each 'check [steps] [items] message', in the order of the review. */
    public static List<String> in(Sketch sketch) {
        return in(sketch.procedure());
    }

    /** The same of a procedure. */
    public static List<String> in(Procedure procedure) {
        return Review.of(procedure).findings().stream().map(Found::line).toList();
    }

    private static String line(Finding finding) {
        return "%s %s %s %s"
                .formatted(finding.check(), finding.steps(), finding.items(), finding.message());
    }
}
