package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Brings the steps into another page order.
 *
 * @param order all steps, each once
 * @param name what a person would call it
 */
public record ReorderPage(List<StepId> order, String name) implements Edit {
    /** Copies the list. */
    public ReorderPage {
        order = List.copyOf(order);
    }

    @Override
    public Procedure apply(Procedure before) {
        Map<StepId, Step> steps =
                before.steps().stream().collect(Collectors.toMap(Step::id, Function.identity()));
        if (order.size() != steps.size() || !steps.keySet().equals(Set.copyOf(order))) {
            throw new IllegalArgumentException("an order that does not name each step once");
        }
        return before.draft().steps(order.stream().map(steps::get).toList()).procedure();
    }
}
