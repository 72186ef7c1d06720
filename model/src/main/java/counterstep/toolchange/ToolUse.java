package counterstep.toolchange;

import counterstep.model.StepId;
import counterstep.model.Tool;
import java.util.List;

/**
 * A tool and where it is used.
 *
 * @param tool listed in the document, or made up for a drive that no listed tool has
 * @param steps the steps that use it, each once, in page order; at least one
 */
public record ToolUse(Tool tool, List<StepId> steps) {
    /** Copies the list. */
    public ToolUse {
        steps = List.copyOf(steps);
    }

    /** The step that uses it first. */
    public StepId first() {
        return steps.get(0);
    }
}
