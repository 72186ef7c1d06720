package counterstep.toolchange;

import counterstep.model.StepId;
import counterstep.model.Tool;

/**
 * A tool is taken in hand, in place of another or as the first.
 *
 * @param step where
 * @param action the action that needs it, from 0; 0 too for a step without actions
 * @param tool which
 */
public record PickUp(StepId step, int action, Tool tool) {}
