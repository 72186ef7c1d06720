package counterstep.mirror;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.Optional;

/**
 * Some of an item leave their state in one step and come back to it in another.
 *
 * @param item of what
 * @param off the step that takes them off, opens, loosens, notes or isolates
 * @param back the step that undoes it; empty if nothing does
 * @param count how many, 1 or more
 * @param offVerb what is done in {@code off}
 */
public record Pair(ItemId item, StepId off, Optional<StepId> back, int count, Verb offVerb) {}
