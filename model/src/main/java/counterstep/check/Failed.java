package counterstep.check;

import counterstep.ledger.Failure;
import counterstep.ledger.Happening;
import counterstep.model.ItemId;
import counterstep.model.StepId;

/**
 * One failed condition with the action it stopped.
 *
 * @param place of the action in the replay, from 0
 * @param happening the action
 * @param failure the condition
 */
public record Failed(int place, Happening happening, Failure failure) {
    /** The step it happens in. */
    public StepId step() {
        return happening.step();
    }

    /** The action's own item. */
    public ItemId item() {
        return happening.what().item().orElseThrow();
    }

    /** The item whose state is wrong. */
    public ItemId about() {
        return failure.about();
    }
}
