package counterstep.links;

import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/** One thing that a document asks of an order of its steps, beside the links. */
public sealed interface Demand permits Company, PhaseOrder {
    /** The word in output. */
    String kind();

    /** The steps that it concerns; none = all. */
    List<StepId> steps();

    /** The fasteners that it is about. */
    Optional<ItemId> item();

    /** Whether an order of all steps gives it. */
    boolean keptIn(List<StepId> order);

    /** In words, steps by their numbers on the page. */
    String told(Index index);
}
