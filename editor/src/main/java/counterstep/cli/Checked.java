package counterstep.cli;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.mending.DrawLinks;
import counterstep.model.Index;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.review.Fixes;
import counterstep.review.Mending;
import counterstep.review.Mending.Mended;
import counterstep.review.Review;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What {@code check} prints.
 *
 * @param facts of the procedure, mended where that was asked for
 * @param review what is found in it
 * @param mended what was mended before
 * @param to the file that the mended procedure stands in
 */
record Checked(Facts facts, Review review, List<Mended> mended, Optional<Path> to) {
    /** A procedure as it is. */
    static Checked of(Procedure procedure) {
        Facts facts = Facts.of(procedure);
        return new Checked(facts, Review.of(facts), List.of(), Optional.empty());
    }

    /** A procedure after mending. */
    static Checked of(Mending mending, Path to) {
        Facts facts = Facts.of(mending.procedure());
        return new Checked(facts, mending.review(), mending.mended(), Optional.of(to));
    }

    Index index() {
        return facts.index();
    }

    /** The links that together make every order complete. */
    List<LinkEnds> missingLinks() {
        return Fixes.of(facts, review).everyOrder().map(DrawLinks::links).orElse(List.of());
    }

    /** The name of the change that would mend a finding; of an accepted one none is asked for. */
    Optional<String> fix(Finding finding) {
        return finding.open()
                ? Fixes.of(facts, review).of(finding).map(Fix::name)
                : Optional.empty();
    }
}
