package counterstep.export.report;

import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.WitnessWords;
import counterstep.export.Print;
import counterstep.ledger.Witness;
import counterstep.model.Index;
import counterstep.model.Waiver;
import counterstep.review.Fixes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The findings of a print, numbered through: first those that count, then the accepted ones.
 *
 * @param open what counts
 * @param accepted what a waiver accepts
 */
record Entries(List<Entry> open, List<Entry> accepted) {
    static Entries of(Print print) {
        List<Finding> findings = print.review().findings();
        Fixes fixes = Fixes.of(print.facts(), print.review());
        List<Entry> open = new ArrayList<>();
        for (Finding finding : findings) {
            if (finding.open()) {
                String fix = fixes.of(finding).map(Fix::name).orElse("");
                open.add(entry(open.size() + 1, finding, fix, print.facts().index()));
            }
        }
        List<Entry> accepted = new ArrayList<>();
        for (Finding finding : findings) {
            if (!finding.open()) {
                int number = open.size() + accepted.size() + 1;
                accepted.add(entry(number, finding, "", print.facts().index()));
            }
        }
        return new Entries(open, accepted);
    }

    private static Entry entry(int number, Finding finding, String fix, Index index) {
        return new Entry(
                number,
                finding.severity().word(),
                finding.check().replace('-', ' '),
                Places.text(index, finding.steps(), finding.items()),
                finding.message(),
                finding.witness()
                        .map(witness -> WitnessWords.lines(witness, index))
                        .orElse(List.of()),
                finding.witness().map(Witness::bound).orElse(false),
                fix,
                finding.waived().map(Entries::accepted).orElse(""));
    }

    private static String accepted(Waiver waiver) {
        String name = waiver.name().isBlank() ? "somebody without a name" : waiver.name().strip();
        String reason = waiver.reason().isBlank() ? "no reason stated" : waiver.reason().strip();
        List<String> by =
                Stream.of(name, waiver.date().strip()).filter(word -> !word.isEmpty()).toList();
        return String.join(", ", by) + ": " + reason;
    }
}
