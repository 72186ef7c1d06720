package counterstep.editor.findings;

import counterstep.check.Finding;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Keeps a finding chosen while the list changes around it. */
final class Chosen {
    private Chosen() {}

    /**
     * Shows other lines. What was chosen stays chosen; where it is gone, the line that took its
     * place is, so that one fix after the other can be applied.
     */
    static void keep(FindingList list, List<FindingRow> next) {
        if (findings(next).equals(findings(list.rows()))) {
            list.renew(next);
            return;
        }
        Optional<FindingRow> before = list.chosen();
        int at = list.getSelectedIndex();
        list.show(next);
        before.flatMap(row -> place(row.finding(), next))
                .or(() -> at < 0 || next.isEmpty() ? Optional.empty() : Optional.of(at))
                .map(place -> Math.min(place, next.size() - 1))
                .ifPresent(
                        place -> {
                            list.setSelectedIndex(place);
                            list.ensureIndexIsVisible(place);
                        });
    }

    private static List<Finding> findings(List<FindingRow> rows) {
        return rows.stream().map(FindingRow::finding).toList();
    }

    private static Optional<Integer> place(Finding finding, List<FindingRow> in) {
        return IntStream.range(0, in.size())
                .filter(at -> in.get(at).finding().sameFault(finding))
                .boxed()
                .findFirst();
    }
}
