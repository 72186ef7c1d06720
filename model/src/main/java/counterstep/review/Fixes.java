package counterstep.review;

import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.DropWaiver;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.mending.DrawLinks;
import counterstep.model.Procedure;
import counterstep.model.Waiver;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The changes that mend findings. Each is tried first: it is offered only when the check that found
 * the fault then finds less, and no check finds more, waived or not. A waiver that has nothing left
 * to accept goes with its finding.
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
        Optional<Fix> links =
                finding.witness().isPresent()
                        ? new OrderFixes(facts).links(finding)
                        : Optional.empty();
        if (links.isPresent() && facts.procedure().waivers().isEmpty()) {
            // Links take orders away and bring none, so they mend without a trial.
            return links;
        }
        return AllChecks.list().stream()
                .filter(check -> check.about().id().equals(finding.check()))
                .flatMap(check -> candidates(check, finding, links))
                .flatMap(fix -> tried(fix, finding).stream())
                .findFirst();
    }

    /**
     * The links that make the procedure complete in every order, as one change; none of them can be
     * left out. Empty where no finding asks for them, or no links that keep the page suffice.
     */
    public Optional<DrawLinks> everyOrder() {
        List<Finding> hidden =
                review.findings().stream()
                        .filter(finding -> finding.witness().isPresent())
                        .toList();
        return hidden.stream().anyMatch(Finding::open)
                ? new OrderFixes(facts).links(hidden.stream().filter(one -> !one.open()).toList())
                : Optional.empty();
    }

    private Stream<Fix> candidates(Check check, Finding finding, Optional<Fix> links) {
        Stream<Fix> moves =
                check.dependsOnOrder() ? new OrderFixes(facts).moves(finding) : Stream.empty();
        return Stream.of(links.stream(), check.fixes(facts, finding), moves)
                .flatMap(fixes -> fixes);
    }

    private Optional<Fix> tried(Fix fix, Finding finding) {
        Procedure after = fix.edit().apply(facts.procedure());
        Facts then = Facts.of(after);
        if (failsOnThePage(then, finding)) {
            return Optional.empty();
        }
        Review left = Review.of(then);
        List<Waiver> idle = newlyIdle(after, left);
        if (idle.isEmpty()) {
            return mends(left, finding) ? Optional.of(fix) : Optional.empty();
        }
        List<Edit> edits = new ArrayList<>(List.of(fix.edit()));
        idle.forEach(waiver -> edits.add(new DropWaiver(waiver)));
        Edit edit = new Edits(fix.edit().name(), edits);
        return mends(Review.of(edit.apply(facts.procedure())), finding)
                ? Optional.of(new Fix(fix.name(), edit))
                : Optional.empty();
    }

    /** The cheap half of the trial: other orders are looked at only if the page is mended. */
    private boolean failsOnThePage(Facts then, Finding finding) {
        if (finding.witness().isPresent() || !facts.procedure().waivers().isEmpty()) {
            return false;
        }
        Predicate<Finding> onThePage = one -> one.witness().isEmpty();
        Map<String, Long> after = counts(Review.of(then, () -> true), onThePage);
        return !fewer(after, counts(review, onThePage), finding);
    }

    private List<Waiver> newlyIdle(Procedure after, Review left) {
        List<Waiver> before = WaiverNoLongerApplies.idle(facts.procedure(), review.findings());
        return WaiverNoLongerApplies.idle(after, left.findings()).stream()
                .filter(waiver -> !before.contains(waiver))
                .toList();
    }

    private boolean mends(Review left, Finding finding) {
        Map<String, Long> after = counts(left, one -> true);
        Map<String, Long> before = counts(review, one -> true);
        return fewer(after, before, finding)
                && nowhereMore(counts(left, Finding::open), counts(review, Finding::open));
    }

    private static boolean fewer(
            Map<String, Long> after, Map<String, Long> before, Finding finding) {
        return after.getOrDefault(finding.check(), 0L) < before.getOrDefault(finding.check(), 0L)
                && nowhereMore(after, before);
    }

    private static boolean nowhereMore(Map<String, Long> after, Map<String, Long> before) {
        return after.keySet().stream()
                .allMatch(check -> after.get(check) <= before.getOrDefault(check, 0L));
    }

    private static Map<String, Long> counts(Review review, Predicate<Finding> counted) {
        return review.findings().stream()
                .filter(counted)
                .collect(Collectors.groupingBy(Finding::check, Collectors.counting()));
    }
}
