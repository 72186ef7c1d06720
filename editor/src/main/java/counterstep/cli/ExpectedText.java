package counterstep.cli;

import counterstep.plan.ExpectedPath;
import counterstep.plan.ExpectedTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the work is expected to take and how far that spreads; nothing without such an estimate. */
final class ExpectedText {
    private ExpectedText() {}

    static List<String> of(Planned planned) {
        List<String> lines = new ArrayList<>();
        long ranged = planned.procedure().steps().stream().filter(ExpectedTime::ranged).count();
        if (ranged > 0) {
            lines.add(
                    "Expected by the three-point estimates of %s: %s%s."
                            .formatted(
                                    Amount.of(ranged, "step"),
                                    total(planned),
                                    critical(planned.expected())));
            lines.add(
                    "  Expected (least + 4 likely + most)/6, standard deviation"
                            + " (most - least)/6; variances add up.");
        }
        return lines;
    }

    private static String total(Planned planned) {
        ExpectedTime total = ExpectedTime.total(planned.procedure());
        return clock(total.seconds()) + " in page order" + spread(total);
    }

    private static String critical(Optional<ExpectedPath> path) {
        return path.map(ExpectedPath::length)
                .map(time -> ", critical path " + clock(time.seconds()) + spread(time))
                .orElse("");
    }

    private static String spread(ExpectedTime time) {
        return " (standard deviation " + clock(time.deviation()) + ")";
    }

    private static String clock(double seconds) {
        return Minutes.clock((int) Math.min(Integer.MAX_VALUE, Math.round(seconds)));
    }
}
