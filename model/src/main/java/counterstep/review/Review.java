package counterstep.review;

import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.CheckSetting;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * What all checks find in one document: with the severities that it asks for, its waivers applied,
 * errors first, then in page order of the place.
 */
public final class Review {
    private final Procedure procedure;
    private final List<Finding> findings;

    private Review(Facts facts, BooleanSupplier stopped) {
        this.procedure = facts.procedure();
        List<Check> wanted =
                Stream.concat(AllChecks.ofTheWork().stream(), Stream.of(new NoSuchCheck()))
                        .filter(this::wanted)
                        .toList();
        List<Finding> onThePage = wanted.stream().flatMap(check -> check.examine(facts)).toList();
        List<Finding> found = new ArrayList<>(onThePage);
        found.addAll(InSomeOrder.findings(facts, wanted, onThePage, stopped));
        WaiverNoLongerApplies idle = new WaiverNoLongerApplies();
        if (wanted(idle)) {
            idle.examine(facts, found).forEach(found::add);
        }
        this.findings =
                found.stream()
                        .map(this::asWanted)
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
        return of(facts, () -> false);
    }

    /** The same, given up once nobody wants it any more; findings may be missing then. */
    public static Review of(Facts facts, BooleanSupplier stopped) {
        return new Review(facts, stopped);
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

    private Optional<CheckSetting> setting(String check) {
        return procedure.settings().stream().filter(one -> one.check().equals(check)).findFirst();
    }

    /** Whether the document leaves the check on. */
    private boolean wanted(Check check) {
        Optional<CheckSetting> setting = setting(check.about().id());
        return setting.isEmpty() || setting.get().severity().isPresent();
    }

    private Finding asWanted(Finding finding) {
        return setting(finding.check())
                .flatMap(CheckSetting::severity)
                .map(finding::withSeverity)
                .orElse(finding);
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
