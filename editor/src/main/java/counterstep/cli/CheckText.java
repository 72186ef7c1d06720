package counterstep.cli;

import counterstep.check.Finding;
import counterstep.model.Index;
import counterstep.model.LinkEnds;
import counterstep.model.Severity;
import counterstep.review.Mending.Mended;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What was mended and what is found, for people. */
final class CheckText {
    private final Checked checked;
    private final List<String> lines = new ArrayList<>();

    private CheckText(Checked checked) {
        this.checked = checked;
    }

    static List<String> of(Checked checked) {
        return new CheckText(checked).told();
    }

    private List<String> told() {
        checked.mended().forEach(this::mended);
        checked.to().ifPresent(to -> lines.add(written(to.toString())));
        for (Finding finding : checked.review().findings()) {
            lines.addAll(FindingText.lines(finding, checked.fix(finding), checked.index()));
        }
        missingLinks();
        lines.add(counts());
        return lines;
    }

    /** A single one stands with its finding already. */
    private void missingLinks() {
        List<LinkEnds> links = checked.missingLinks();
        if (links.size() > 1) {
            lines.add(
                    links.stream()
                            .map(this::link)
                            .collect(
                                    Collectors.joining(
                                            ", ", "No order goes wrong with these links: ", ".")));
        }
    }

    private String link(LinkEnds ends) {
        Index index = checked.index();
        return index.number(ends.before()) + " → " + index.number(ends.after());
    }

    private void mended(Mended one) {
        lines.add("mended " + FindingLine.of(one.finding(), Index.of(one.before())));
        lines.add("  by: " + Plain.line(one.fix().name()));
    }

    private String written(String to) {
        String what = Amount.of(checked.mended().size(), "fix", "fixes");
        return Plain.line(what + " applied, written to " + to) + ".";
    }

    private String counts() {
        List<Finding> all = checked.review().findings();
        long waived = all.stream().filter(finding -> !finding.open()).count();
        return "%s, %s, %s%s."
                .formatted(
                        Amount.of(checked.review().count(Severity.ERROR), "error"),
                        Amount.of(checked.review().count(Severity.DOUBT), "doubt"),
                        Amount.of(checked.review().count(Severity.HINT), "hint"),
                        waived == 0 ? "" : ", " + waived + " waived");
    }
}
