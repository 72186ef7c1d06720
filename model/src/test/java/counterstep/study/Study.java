package counterstep.study;

import counterstep.check.Finding;
import counterstep.model.Severity;
import counterstep.review.Review;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Breaks each base in every way of some kinds, and reviews each mutant. */
final class Study {
    private final List<Base> bases;
    private final Map<Base, List<Finding>> clean;

    /**
     * @throws IllegalStateException if a base has an error or a doubt before it is broken
     */
    Study(List<Base> bases) {
        this.bases = bases;
        this.clean = bases.stream().collect(Collectors.toMap(base -> base, Study::clean));
    }

    private static List<Finding> clean(Base base) {
        List<Finding> findings = Review.of(base.procedure()).findings();
        if (findings.stream().anyMatch(finding -> finding.severity() != Severity.HINT)) {
            throw new IllegalStateException(base.name() + " has faults of its own: " + findings);
        }
        return findings;
    }

    /** The table row of a kind. */
    Row row(Kind kind) {
        return new Row(kind, bases.stream().flatMap(base -> outcomes(kind, base)).toList());
    }

    private Stream<Outcome> outcomes(Kind kind, Base base) {
        return kind.faults()
                .apply(base.procedure())
                .filter(mutant -> !mutant.procedure().equals(base.procedure()))
                .map(mutant -> Outcome.of(kind, base, clean.get(base), mutant));
    }

    /** The rows of some kinds; each is told when it is done. */
    List<Row> rows(List<Kind> kinds, Consumer<Row> done) {
        return kinds.stream().map(this::row).peek(done).toList();
    }
}
