package counterstep.study;

import counterstep.check.Finding;
import counterstep.model.Severity;
import counterstep.review.Review;
import counterstep.study.Verdict.Harm;
import java.util.List;

/**
 * What became of one mutant.
 *
 * @param base the sample it was made of
 * @param what the fault
 * @param found whether any error or doubt, or the check that ought to, tells it
 * @param byItsCheck whether the check that ought to tells it
 * @param verdict whether it can hurt, of one that no check tells; of the others that it can
 */
record Outcome(String base, String what, boolean found, boolean byItsCheck, Verdict verdict) {
    static Outcome of(Kind kind, Base base, List<Finding> clean, Mutant mutant) {
        List<Finding> fresh =
                Review.of(mutant.procedure()).findings().stream()
                        .filter(finding -> clean.stream().noneMatch(finding::sameFault))
                        .toList();
        boolean told = fresh.stream().anyMatch(one -> kind.tellers().contains(one.check()));
        boolean serious = fresh.stream().anyMatch(one -> one.severity() != Severity.HINT);
        boolean found = told || serious;
        Verdict verdict = found ? Verdict.hurts("told") : kind.judge().of(base, mutant);
        return new Outcome(base.name(), mutant.what(), found, told, verdict);
    }

    boolean harmless() {
        return !found && verdict.harm() == Harm.NONE;
    }

    /** Whether it can hurt by what the document says, and no check tells it. */
    boolean missed() {
        return !found && verdict.harm() == Harm.FACTS;
    }

    /** Whether it can hurt as only a person can know. */
    boolean unknowable() {
        return !found && verdict.harm() == Harm.HAND;
    }
}
