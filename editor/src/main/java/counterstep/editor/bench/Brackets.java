package counterstep.editor.bench;

import counterstep.check.Finding;
import counterstep.editor.analysis.Analysis;
import counterstep.ledger.OnTheBench.Lying;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The findings of the check of look-alikes, as far as they concern what lies on the mat now. Two of
 * one length are none by themselves: only a third makes them doubtful.
 */
final class Brackets {
    private static final String CHECK = "look-alikes";

    private Brackets() {}

    /** The fasteners, those that are alike together, else in the order given. */
    static List<Lying> together(Analysis analysis, List<Lying> fasteners) {
        List<Lying> ordered = new ArrayList<>();
        for (Lying each : fasteners) {
            if (!ordered.contains(each)) {
                ordered.add(each);
                for (Finding finding : about(analysis, each.item())) {
                    fasteners.stream()
                            .filter(other -> finding.items().contains(other.item()))
                            .filter(other -> !ordered.contains(other))
                            .forEach(ordered::add);
                }
            }
        }
        return ordered;
    }

    private static List<Finding> about(Analysis analysis, ItemId item) {
        return findings(analysis).stream()
                .filter(finding -> finding.items().contains(item))
                .toList();
    }

    private static List<Finding> findings(Analysis analysis) {
        return analysis.review().findings().stream()
                .filter(finding -> finding.check().equals(CHECK))
                .toList();
    }

    /** What to draw beside rows in this order. */
    static List<Bracket> beside(Analysis analysis, List<Lying> rows) {
        List<Bracket> brackets = new ArrayList<>();
        for (Finding finding : findings(analysis)) {
            int[] places =
                    IntStream.range(0, rows.size())
                            .filter(row -> finding.items().contains(rows.get(row).item()))
                            .toArray();
            String words = lengths(analysis, IntStream.of(places).mapToObj(rows::get).toList());
            if (places.length > 1 && !words.isEmpty()) {
                int first = places[0];
                int last = places[places.length - 1];
                brackets.add(new Bracket(first, last, lane(brackets, first, last), words));
            }
        }
        return brackets;
    }

    private static int lane(List<Bracket> brackets, int first, int last) {
        return (int)
                brackets.stream()
                        .filter(other -> first <= other.last() && last >= other.first())
                        .count();
    }

    /** '3.5 and 4 mm'; empty where all are of one length. */
    private static String lengths(Analysis analysis, List<Lying> alike) {
        List<FastenerSet> sets =
                alike.stream()
                        .map(each -> analysis.index().item(each.item()))
                        .filter(FastenerSet.class::isInstance)
                        .map(FastenerSet.class::cast)
                        .toList();
        if (sets.stream().anyMatch(set -> set.length().isEmpty())) {
            return "length not stated";
        }
        TreeSet<Double> lengths =
                sets.stream()
                        .map(set -> set.length().getAsDouble())
                        .collect(Collectors.toCollection(TreeSet::new));
        DecimalFormat plain =
                new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT));
        return lengths.size() < 2
                ? ""
                : lengths.stream().map(plain::format).collect(Collectors.joining(" and ")) + " mm";
    }
}
