package counterstep.cli;

import counterstep.check.Finding;
import counterstep.check.WitnessWords;
import counterstep.ledger.Witness;
import counterstep.model.Index;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A finding on its line; under it, further in, the order that goes wrong and what mends it. */
final class FindingText {
    private FindingText() {}

    static List<String> lines(Finding finding, Optional<String> fix, Index index) {
        List<String> lines = new ArrayList<>();
        lines.add(FindingLine.of(finding, index));
        finding.witness().ifPresent(witness -> lines.addAll(story(witness, index)));
        fix.ifPresent(name -> lines.add("  fix: " + Plain.line(name)));
        return lines;
    }

    private static List<String> story(Witness witness, Index index) {
        List<String> lines = new ArrayList<>(List.of("  goes wrong in this order:"));
        for (String line : WitnessWords.lines(witness, index)) {
            lines.add("    " + lines.size() + ". " + Plain.line(line));
        }
        if (witness.bound()) {
            lines.add("  " + WitnessWords.BOUND);
        }
        return lines;
    }
}
