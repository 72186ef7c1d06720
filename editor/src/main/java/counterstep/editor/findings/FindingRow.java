package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.check.Fix;
import java.util.Optional;

/**
 * A line of the list.
 *
 * @param finding what was found
 * @param fix what mends it; empty where nothing is known, or not yet
 * @param place 'step 7', 'steps 9 to 20', or empty
 */
record FindingRow(Finding finding, Optional<Fix> fix, String place) {
    String check() {
        return finding.check().replace('-', ' ');
    }

    String fixName() {
        return fix.map(Fix::name).orElse("");
    }

    /** What is said of its acceptance: 'waived by R. Oda, 2026-03-02: reason'; empty if open. */
    String waiver() {
        return finding.waived()
                .map(
                        waiver ->
                                "waived by %s, %s: %s"
                                        .formatted(waiver.name(), waiver.date(), waiver.reason()))
                .orElse("");
    }

    /** The word that accepts it, or takes that back. */
    String waive() {
        return finding.open() ? "Waive" : "Withdraw";
    }
}
