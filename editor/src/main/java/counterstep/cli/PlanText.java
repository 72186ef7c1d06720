package counterstep.cli;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.plan.Durations;
import counterstep.plan.StepTimes;
import counterstep.toolchange.FewestToolChanges;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A plan as people read it: a row a step, then the totals; all times in minutes:seconds. */
final class PlanText {
    private static final int TITLE_WIDTH = 40;
    private static final String ROW = "%4s  %-" + TITLE_WIDTH + "s %7s  %15s  %15s %7s %7s  %s";

    private PlanText() {}

    static List<String> of(Planned planned) {
        List<String> lines = new ArrayList<>();
        lines.add(Plain.line(planned.procedure().titleBlock().title()));
        lines.add("Times in minutes:seconds.");
        lines.add("");
        lines.add(row("step", "", "takes", "earliest", "latest", "float", "free", ""));
        List<Step> steps = planned.procedure().steps();
        for (int place = 0; place < steps.size(); place++) {
            lines.add(step(place + 1, steps.get(place), planned));
        }
        lines.add("");
        lines.addAll(totals(planned));
        lines.addAll(CrewText.of(planned));
        return lines;
    }

    private static String step(int number, Step step, Planned planned) {
        Optional<CriticalPath> path = planned.criticalPath();
        Optional<StepTimes> times = path.map(found -> found.times().get(step.id()));
        return row(
                String.valueOf(number),
                Plain.cut(step.title(), TITLE_WIDTH),
                Minutes.clock(Durations.seconds(step)),
                times.map(at -> span(at.earliestStart(), at.earliestFinish())).orElse("?"),
                times.map(at -> span(at.latestStart(), at.latestFinish())).orElse("?"),
                times.map(at -> Minutes.clock(at.totalFloat())).orElse("?"),
                times.map(at -> Minutes.clock(at.freeFloat())).orElse("?"),
                marks(step, planned));
    }

    private static String marks(Step step, Planned planned) {
        List<String> marks = new ArrayList<>();
        planned.criticalPath()
                .filter(found -> found.critical(step.id()))
                .ifPresent(found -> marks.add("critical"));
        if (planned.estimated().reckoned(step)) {
            marks.add("estimated by the figures");
        }
        return String.join(", ", marks);
    }

    private static String span(int from, int to) {
        return Minutes.clock(from) + " - " + Minutes.clock(to);
    }

    private static String row(String... cells) {
        return ROW.formatted((Object[]) cells).stripTrailing();
    }

    private static List<String> totals(Planned planned) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "%s, %s in page order."
                        .formatted(
                                Amount.of(planned.procedure().steps().size(), "step"),
                                Minutes.clock(Durations.total(planned.procedure()))));
        lines.addAll(EstimateText.of(planned.estimated()));
        planned.criticalPath().ifPresent(path -> lines.add(critical(path)));
        lines.addAll(ExpectedText.of(planned));
        lines.add(
                "%s in page order."
                        .formatted(Amount.of(planned.toolChanges().count(), "tool change")));
        planned.best().ifPresent(best -> lines.addAll(fewest(best, planned.procedure())));
        lines.addAll(PlanDemands.of(planned));
        return lines;
    }

    private static List<String> fewest(Planned.BestOrder best, Procedure procedure) {
        FewestToolChanges fewest = best.fewest();
        String proof =
                fewest.proved()
                        ? "proved: no order that the links allow has fewer"
                        : "not proved: no order has fewer than " + fewest.atLeast();
        List<String> lines = new ArrayList<>();
        lines.add("Fewest possible: %d, %s.".formatted(fewest.count(), proof));
        List<StepId> page = procedure.steps().stream().map(Step::id).toList();
        if (!best.order().equals(page)) {
            lines.add(
                    "Steps in that order: "
                            + best.order().stream()
                                    .map(step -> String.valueOf(page.indexOf(step) + 1))
                                    .collect(Collectors.joining(" ")));
        }
        return lines;
    }

    private static String critical(CriticalPath path) {
        return "Critical path %s; %s%s."
                .formatted(
                        Minutes.clock(path.seconds()),
                        Amount.of(path.paths().size(), "critical path"),
                        path.morePaths() ? " listed, there are more" : "");
    }
}
