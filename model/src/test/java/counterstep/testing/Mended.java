package counterstep.testing;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.model.Procedure;
import counterstep.review.Fixes;
import counterstep.review.Review;
import java.util.Optional;

/**
 * The fix that is offered for the first finding of a check, and the procedure after it.
 *
 * @param name what the button says
 * @param procedure the procedure when it is mended
 */
public record Mended(String name, Procedure procedure) {
    /** Mends the first finding of a check; empty where no fix is offered. */
    public static Optional<Mended> of(Procedure procedure, String check) {
        Facts facts = Facts.of(procedure);
        Review review = Review.of(facts);
        Finding first =
                review.findings().stream()
                        .filter(finding -> finding.check().equals(check))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("no " + check));
        return Fixes.of(facts, review).of(first).map(fix -> after(procedure, fix));
    }

    private static Mended after(Procedure procedure, Fix fix) {
        return new Mended(fix.name(), fix.edit().apply(procedure));
    }
}
