package counterstep.cli;

import counterstep.estimate.Estimates;
import counterstep.estimate.TimeShares;
import counterstep.model.Index;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How much of a plan is measured and how much is estimated, and where the estimates are from. */
final class EstimateText {
    private EstimateText() {}

    static List<String> of(Estimated estimated) {
        TimeShares shares = estimated.shares();
        List<String> lines = new ArrayList<>();
        String byFigures =
                estimated.counted()
                        ? ", estimated by the figures " + Minutes.clock(shares.reckoned())
                        : "";
        lines.add(
                "Of that measured %s, estimated by the writer %s%s; waits %s."
                        .formatted(
                                Minutes.clock(shares.measured()),
                                Minutes.clock(shares.estimated()),
                                byFigures,
                                Minutes.clock(shares.waits())));
        if (!shares.untimed().isEmpty()) {
            lines.add(untimed(estimated, shares));
            lines.addAll(unknown(estimated.estimates(), shares, Index.of(estimated.stated())));
        }
        return lines;
    }

    private static String untimed(Estimated estimated, TimeShares shares) {
        int found = shares.untimed().size() - shares.unknown().size();
        String counted = estimated.counted() ? "counted" : "not counted; --estimate counts them";
        return "%s without a time. Estimates for %d of them: %s without tool changes, %s. Figures: %s."
                .formatted(
                        Amount.of(shares.untimed().size(), "step"),
                        found,
                        Minutes.clock(shares.reckoned()),
                        counted,
                        estimated.estimates().source());
    }

    /** One line for each reason. */
    private static List<String> unknown(Estimates estimates, TimeShares shares, Index index) {
        Map<String, List<StepId>> byReason =
                shares.unknown().stream()
                        .collect(
                                Collectors.groupingBy(
                                        estimates.none()::get,
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        List<String> lines = new ArrayList<>();
        byReason.forEach(
                (reason, steps) ->
                        lines.add(
                                "  No estimate for %s %s: %s."
                                        .formatted(
                                                steps.size() == 1 ? "step" : "steps",
                                                steps.stream()
                                                        .map(index::number)
                                                        .map(String::valueOf)
                                                        .collect(Collectors.joining(", ")),
                                                Plain.line(reason))));
        return lines;
    }
}
