package counterstep.editor.order;

import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.toolchange.ToolChanges;
import counterstep.toolchange.ToolRun;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The page and another order of it, ready to be drawn.
 *
 * @param page the document as it is
 * @param other the same steps in the other order
 * @param pageRuns the tools in hand along the page
 * @param otherRuns the same along the other order, under the same numbers
 * @param moved the steps that were moved, as few as can be said to be
 */
record TwoOrders(
        Index page,
        Index other,
        List<ToolRun> pageRuns,
        List<ToolRun> otherRuns,
        Set<StepId> moved) {
    static TwoOrders of(Procedure before, Procedure after) {
        ToolChanges now = ToolChanges.inPageOrder(before);
        ToolChanges then = ToolChanges.inPageOrder(after);
        Map<Tool, Integer> numbers = ToolRun.numbers(now);
        return new TwoOrders(
                Index.of(before),
                Index.of(after),
                ToolRun.of(before, now, numbers),
                ToolRun.of(after, then, numbers),
                MovedSteps.between(ids(before), ids(after)));
    }

    private static List<StepId> ids(Procedure procedure) {
        return procedure.steps().stream().map(Step::id).toList();
    }

    int size() {
        return page.procedure().steps().size();
    }

    /** By how many places a step comes earlier; negative: later. */
    int earlier(StepId step) {
        return page.page(step) - other.page(step);
    }

    /** One step in words. */
    String told(StepId step) {
        int by = earlier(step);
        String moved =
                by == 0
                        ? "stays"
                        : "%s by %d".formatted(by > 0 ? "earlier" : "later", Math.abs(by));
        String tools =
                otherRuns.stream()
                        .filter(run -> (int) run.from() == other.page(step))
                        .map(run -> ", takes up " + run.tool().label())
                        .collect(Collectors.joining());
        return "%d %s: %s, then step %d%s"
                .formatted(
                        page.number(step),
                        page.step(step).title(),
                        moved,
                        other.number(step),
                        tools);
    }
}
