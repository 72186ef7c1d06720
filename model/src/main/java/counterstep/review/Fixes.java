package counterstep.review;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.model.Procedure;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The changes that mend findings. Each is tried first: it is offered only when the check that found
 * the fault then finds less, and no check finds more.
 */
public final class Fixes {
    private final Facts facts;
    private final Review review;

    private Fixes(Facts facts, Review review) {
        this.facts = facts;
        this.review = review;
    }

    /** The fixes for what a review of these facts found. */
    public static Fixes of(Facts facts, Review review) {
        return new Fixes(facts, review);
    }

    /** The best change that mends a finding of the review; empty where none is known. */
    public Optional<Fix> of(Finding finding) {
        return AllChecks.list().stream()
                .filter(check -> check.about().id().equals(finding.check()))
                .flatMap(check -> check.fixes(facts, finding))
                .filter(fix -> mends(fix, finding))
                .findFirst();
    }

    private boolean mends(Fix fix, Finding finding) {
        Procedure after = fix.edit().apply(facts.procedure());
        Map<String, Long> left = counts(Review.of(after));
        Map<String, Long> before = counts(review);
        return left.getOrDefault(finding.check(), 0L) < before.getOrDefault(finding.check(), 0L)
                && left.keySet().stream()
                        .allMatch(check -> left.get(check) <= before.getOrDefault(check, 0L));
    }

    private static Map<String, Long> counts(Review review) {
        return review.findings().stream()
                .collect(Collectors.groupingBy(Finding::check, Collectors.counting()));
    }
}
