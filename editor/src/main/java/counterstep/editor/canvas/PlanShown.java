package counterstep.editor.canvas;

import counterstep.editor.analysis.Analysis;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.plan.StepTimes;
import counterstep.toolchange.ToolRun;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the plan adds to the drawing.
 *
 * @param order the steps in page order
 * @param runs the tools in hand along it
 * @param critical steps that may not be late
 * @param later by how much each other step may be late, m:ss
 */
record PlanShown(
        List<StepId> order, List<ToolRun> runs, Set<StepId> critical, Map<StepId, String> later) {
    static final PlanShown NOTHING = new PlanShown(List.of(), List.of(), Set.of(), Map.of());

    static PlanShown of(Analysis analysis) {
        Set<StepId> critical = new HashSet<>();
        Map<StepId, String> later = new HashMap<>();
        boolean timed = analysis.criticalPath().map(CriticalPath::seconds).orElse(0) > 0;
        if (timed) {
            analysis.criticalPath()
                    .orElseThrow()
                    .times()
                    .forEach((step, times) -> note(step, times, critical, later));
        }
        return new PlanShown(
                analysis.precedence().steps(),
                ToolRun.of(analysis.procedure(), analysis.toolChanges()),
                critical,
                later);
    }

    private static void note(
            StepId step, StepTimes times, Set<StepId> critical, Map<StepId, String> later) {
        if (times.critical()) {
            critical.add(step);
        } else {
            int seconds = times.totalFloat();
            later.put(step, "%d:%02d".formatted(seconds / 60, seconds % 60));
        }
    }
}
