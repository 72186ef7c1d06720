package counterstep.cli;

import counterstep.check.Finding;
import counterstep.model.Index;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.List;
import java.util.stream.Collectors;

/** A finding on one line, steps by the number that windows and guides show. */
final class FindingLine {
    private FindingLine() {}

    /** 'error never-put-back step 9: 2 of 'lid screws' stay out.' */
    static String of(Finding finding, Index index) {
        String line =
                "%s %s%s: %s%s"
                        .formatted(
                                finding.severity().word(),
                                finding.check(),
                                steps(finding.steps(), index),
                                finding.message(),
                                finding.waived().map(FindingLine::reason).orElse(""));
        return Plain.line(line);
    }

    private static String steps(List<StepId> steps, Index index) {
        if (steps.isEmpty()) {
            return "";
        }
        String numbers =
                steps.stream()
                        .map(step -> String.valueOf(index.number(step)))
                        .collect(Collectors.joining(", "));
        return (steps.size() == 1 ? " step " : " steps ") + numbers;
    }

    private static String reason(Waiver waiver) {
        return " (waived by %s%s: %s)"
                .formatted(
                        waiver.name().isBlank() ? "somebody" : waiver.name(),
                        waiver.date().isBlank() ? "" : ", " + waiver.date(),
                        waiver.reason().isBlank() ? "no reason stated" : waiver.reason());
    }
}
