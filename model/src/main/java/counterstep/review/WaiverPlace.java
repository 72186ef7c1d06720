package counterstep.review;

import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.List;

/** What of a waiver is still in the document, and how it is told of. */
record WaiverPlace(Index index, Waiver waiver) {
    List<StepId> steps() {
        return waiver.steps().stream().filter(step -> index.findStep(step).isPresent()).toList();
    }

    List<ItemId> items() {
        return waiver.items().stream().filter(item -> index.findItem(item).isPresent()).toList();
    }

    /** 'R. Weir', or 'somebody' where no name is stated. */
    String who() {
        return waiver.name().isBlank() ? "somebody" : waiver.name().strip();
    }
}
