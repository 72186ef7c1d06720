package counterstep.review;

import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.CheckSetting;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What all checks find in one document: with the severities that it asks for, its waivers applied,
 * errors first, then in page order of the place.
 */
public final class Review {
    private final Procedure procedure;
    private final List<Finding> findings;

    private Review(Facts facts) {
        this.procedure = facts.procedure();
        List<Finding> found =
                Stream.concat(AllChecks.ofTheWork().stream(), Stream.of(new NoSuchCheck()))
                        .flatMap(check -> examined(check, facts))
                        .toList();
        WaiverNoLongerApplies idle = new WaiverNoLongerApplies();
        this.findings =
                Stream.concat(found.stream(), taken(idle, () -> idle.examine(facts, found)))
                        .map(finding -> finding.withWaiver(waiverOf(finding)))
                        .sorted(order(facts))
                        .toList();
    }

    /** Reviews a procedure. */
    public static Review of(Procedure procedure) {
        return of(Facts.of(procedure));
    }

    /** Reviews a procedure whose facts are derived already. */
    public static Review of(Facts facts) {
        return new Review(facts);
    }

    /** What was found, waived or not. */
    public List<Finding> findings() {
        return findings;
    }

    /** How many findings of a severity count, that is, are not waived. */
    public long count(Severity severity) {
        return findings.stream()
                .filter(Finding::open)
                .filter(finding -> finding.severity() == severity)
                .count();
    }

    /** Whether no error counts. */
    public boolean clean() {
        return count(Severity.ERROR) == 0;
    }

    private Stream<Finding> examined(Check check, Facts facts) {
        return taken(check, () -> check.examine(facts));
    }

    /** The findings of a check at the severity that the document asks for, if it wants any. */
    private Stream<Finding> taken(Check check, Supplier<Stream<Finding>> found) {
        Optional<CheckSetting> setting =
                procedure.settings().stream()
                        .filter(one -> one.check().equals(check.about().id()))
                        .findFirst();
        if (setting.isEmpty()) {
            return found.get();
        }
        return setting.get().severity().stream()
                .flatMap(severity -> found.get().map(finding -> finding.withSeverity(severity)));
    }

    private Optional<Waiver> waiverOf(Finding finding) {
        return procedure.waivers().stream().filter(finding::acceptedBy).findFirst();
    }

    private static Comparator<Finding> order(Facts facts) {
        return Comparator.comparing(Finding::severity)
                .thenComparingInt(finding -> page(facts, finding.steps()));
    }

    private static int page(Facts facts, List<StepId> steps) {
        return steps.isEmpty() ? Integer.MAX_VALUE : facts.index().page(steps.get(0));
    }
}
