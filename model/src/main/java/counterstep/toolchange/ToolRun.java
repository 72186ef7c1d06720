package counterstep.toolchange;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A tool in hand, from its pick-up to the next one or to the end of the work.
 *
 * @param tool which
 * @param number of the tool, from 0 in the order in which the page picks tools up first
 * @param from its pick-up as a place on the page: 3.5 is half way through the fourth step; actions
 *     of a step count as equally long
 * @param to its end in the same way
 */
public record ToolRun(Tool tool, int number, double from, double to) {
    /** The runs of a document in page order, one after the other without a gap. */
    public static List<ToolRun> of(Procedure procedure, ToolChanges changes) {
        return of(procedure, changes, numbers(changes));
    }

    /** Numbers for tools, in the order in which they are picked up first. */
    public static Map<Tool, Integer> numbers(ToolChanges changes) {
        Map<Tool, Integer> numbers = new HashMap<>();
        changes.pickUps().forEach(pickUp -> numbers.putIfAbsent(pickUp.tool(), numbers.size()));
        return numbers;
    }

    /**
     * The same under given numbers, so that tools look alike in two orders of one document.
     *
     * @param numbers of all tools that are picked up
     */
    public static List<ToolRun> of(
            Procedure procedure, ToolChanges changes, Map<Tool, Integer> numbers) {
        Map<StepId, Integer> places = new HashMap<>();
        for (Step step : procedure.steps()) {
            places.put(step.id(), places.size());
        }
        List<ToolRun> runs = new ArrayList<>();
        double end = procedure.steps().size();
        List<PickUp> pickUps = changes.pickUps();
        for (int at = pickUps.size() - 1; at >= 0; at--) {
            PickUp pickUp = pickUps.get(at);
            int place = places.get(pickUp.step());
            int actions = Math.max(1, procedure.steps().get(place).actions().size());
            double from = place + (double) pickUp.action() / actions;
            runs.add(0, new ToolRun(pickUp.tool(), numbers.get(pickUp.tool()), from, end));
            end = from;
        }
        return runs;
    }
}
