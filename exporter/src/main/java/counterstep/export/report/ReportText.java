package counterstep.export.report;

import static counterstep.export.markdown.Inline.escaped;

import counterstep.check.WitnessWords;
import counterstep.export.markdown.Inline;
import counterstep.export.markdown.Lines;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sets a report as CommonMark, which reads well as plain text in a mail or beside the file. */
final class ReportText {
    private static final String LINE = " ____________";

    private final Report report;
    private final Lines lines = new Lines();

    private ReportText(Report report) {
        this.report = report;
    }

    static String of(Report report) {
        return new ReportText(report).set();
    }

    private String set() {
        title();
        lines.block("## Findings");
        if (report.open().isEmpty()) {
            lines.block("Nothing that counts was found.");
        }
        report.open().forEach(this::entry);
        if (!report.accepted().isEmpty()) {
            lines.block("## Accepted findings").block("They do not count.");
            report.accepted().forEach(this::entry);
        }
        if (!report.comments().isEmpty()) {
            lines.block("## Comments");
            lines.list(report.comments().stream().map(ReportText::comment).toList());
        }
        lines.block("## Checks").block("Every check, and how many of its findings count:");
        lines.list(report.checks().stream().map(ReportText::check).toList());
        lines.block("## Sign-off").block(escaped(SignOff.holdsFor(report.imprint())));
        lines.list(SignOff.ROLES.stream().map(ReportText::signature).toList());
        return lines.toString();
    }

    private void title() {
        lines.block("# " + escaped(report.title()));
        lines.block(joined(" · ", report.facts().stream()));
        lines.block("**" + escaped(report.verdict()) + "**");
        lines.list(
                report.about().stream()
                        .map(fact -> fact.name() + ": " + escaped(fact.value()))
                        .toList());
        lines.block(
                "Findings that count: "
                        + report.counts().stream()
                                .map(ReportText::count)
                                .collect(Collectors.joining(", "))
                        + ".");
    }

    private static String count(Report.Count count) {
        String start = count.severity() + " " + count.open();
        return count.accepted() == 0 ? start : start + " (accepted " + count.accepted() + ")";
    }

    private void entry(Entry entry) {
        String box = entry.accepted().isEmpty() ? "[ ] " : "";
        lines.block(
                "### %d. %s%s: %s"
                        .formatted(entry.number(), box, entry.severity(), escaped(entry.name())));
        lines.block("*" + escaped(entry.place()) + "*");
        lines.block(escaped(entry.message()));
        if (!entry.order().isEmpty()) {
            lines.block("It goes wrong in this order, which the links allow:");
            lines.list(entry.order().stream().map(Inline::escaped).toList());
            lines.block(entry.bound() ? escaped(WitnessWords.BOUND) : "");
        }
        lines.block(entry.fix().isEmpty() ? "" : "Proposed fix: " + escaped(entry.fix()));
        lines.block(entry.accepted().isEmpty() ? "" : "Accepted by " + escaped(entry.accepted()));
    }

    private static String comment(Remark remark) {
        String by = joined(", ", Stream.of(remark.author(), remark.date()));
        String head = "**" + escaped(remark.place()) + "**" + (by.isEmpty() ? "" : ", " + by);
        return head + ": " + escaped(remark.text());
    }

    private static String check(CheckRow row) {
        String found = row.found().isEmpty() ? "" : ": " + row.found();
        String remark = row.remark().isEmpty() ? "" : "; " + escaped(row.remark());
        return escaped(row.name()) + " (" + row.severity() + ")" + found + remark;
    }

    private static String signature(String role) {
        return role + ": name" + LINE + " date" + LINE + " signature" + LINE;
    }

    private static String joined(String between, Stream<String> words) {
        return words.filter(word -> !word.isBlank())
                .map(Inline::escaped)
                .collect(Collectors.joining(between));
    }
}
