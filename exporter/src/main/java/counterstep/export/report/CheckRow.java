package counterstep.export.report;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Finding;
import counterstep.export.Print;
import counterstep.model.CheckSetting;
import counterstep.model.Severity;
import counterstep.review.AllChecks;
import java.util.List;
import java.util.Optional;

/**
 * One check and what became of it.
 *
 * @param name on screen
 * @param severity as this document takes it, 'off' where it does not
 * @param found how many findings count; empty where it is off
 * @param remark what is accepted; why it is off or taken otherwise
 */
record CheckRow(String name, String severity, String found, String remark) {
    /** Every check, in the order in which users see them. */
    static List<CheckRow> all(Print print) {
        return AllChecks.list().stream().map(check -> of(check, print)).toList();
    }

    private static CheckRow of(Check check, Print print) {
        About about = check.about();
        List<Finding> findings =
                print.review().findings().stream()
                        .filter(finding -> finding.check().equals(about.id()))
                        .toList();
        long open = findings.stream().filter(Finding::open).count();
        String accepted = open == findings.size() ? "" : findings.size() - open + " accepted";
        Optional<CheckSetting> setting =
                print.procedure().settings().stream()
                        .filter(one -> one.check().equals(about.id()))
                        .findFirst();
        if (setting.isEmpty()) {
            return new CheckRow(about.name(), about.severity().word(), open + "", accepted);
        }
        return setting.get()
                .severity()
                .map(
                        severity ->
                                new CheckRow(
                                        about.name(),
                                        severity.word(),
                                        open + "",
                                        joined(
                                                accepted,
                                                otherwise(about, severity, setting.get()))))
                .orElse(new CheckRow(about.name(), "off", "", because("off", setting.get())));
    }

    private static String otherwise(About about, Severity severity, CheckSetting setting) {
        return severity == about.severity()
                ? ""
                : because(about.severity().word() + " by default", setting);
    }

    private static String because(String what, CheckSetting setting) {
        return what
                + ": "
                + (setting.reason().isBlank() ? "no reason stated" : setting.reason().strip());
    }

    private static String joined(String first, String second) {
        return first.isEmpty() || second.isEmpty() ? first + second : first + "; " + second;
    }
}
