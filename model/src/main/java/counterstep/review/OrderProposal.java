package counterstep.review;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.edit.ReorderPage;
import counterstep.links.Demand;
import counterstep.model.Procedure;
import counterstep.toolchange.FewestToolChanges;
import counterstep.toolchange.ToolChanges;
import counterstep.toolchange.Tooling;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * The page order of fewest tool changes, checked before it is offered.
 *
 * @param now changes as the page has them
 * @param fewest how many the other order has, and whether that is proved the least
 * @param edit brings the page into that order
 * @param pageBreaks what is asked of every order and the page does not keep
 * @param worse findings of that order, of checks that find more in it than on the page
 */
public record OrderProposal(
        int now,
        FewestToolChanges fewest,
        ReorderPage edit,
        List<Demand> pageBreaks,
        List<Finding> worse) {
    /** Copies the lists. */
    public OrderProposal {
        pageBreaks = List.copyOf(pageBreaks);
        worse = List.copyOf(worse);
    }

    /**
     * Searches and checks.
     *
     * @param stopped then the search answers with what it has
     * @return empty if no order keeps the links and what else is asked
     */
    public static Optional<OrderProposal> of(Procedure procedure, BooleanSupplier stopped) {
        Facts facts = Facts.of(procedure);
        Tooling tooling = Tooling.of(procedure);
        return FewestToolChanges.of(procedure, facts.precedence(), tooling, stopped)
                .map(
                        fewest -> {
                            ReorderPage edit =
                                    new ReorderPage(
                                            fewest.nearestToPage(stopped),
                                            "Take the order of fewest tool changes");
                            return new OrderProposal(
                                    ToolChanges.inPageOrder(procedure, tooling).count(),
                                    fewest,
                                    edit,
                                    fewest.demands().brokenIn(facts.precedence().steps()),
                                    worse(Review.of(facts), Review.of(edit.apply(procedure))));
                        });
    }

    private static List<Finding> worse(Review page, Review other) {
        Map<String, Long> before = counts(page);
        Map<String, Long> after = counts(other);
        return other.findings().stream()
                .filter(Finding::open)
                .filter(one -> after.get(one.check()) > before.getOrDefault(one.check(), 0L))
                .toList();
    }

    private static Map<String, Long> counts(Review review) {
        return review.findings().stream()
                .filter(Finding::open)
                .collect(Collectors.groupingBy(Finding::check, Collectors.counting()));
    }

    /** Whether the other order has fewer changes than the page, or keeps what the page does not. */
    public boolean isBetter() {
        return fewest.count() < now || !pageBreaks.isEmpty();
    }
}
