package counterstep.edit;

import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.model.SupplyId;
import counterstep.model.ToolId;

/** Ids that were never given in a document: a letter for the kind and the next free number. */
public final class FreshIds {
    private FreshIds() {}

    /** For a new step. */
    public static StepId step(Procedure procedure) {
        return new StepId("s" + next(procedure));
    }

    /** For a new item of the same kind as {@code sample}. */
    public static ItemId item(Procedure procedure, Item sample) {
        return new ItemId(sample.match(ItemLetter.INSTANCE) + next(procedure));
    }

    /** For a new tool. */
    public static ToolId tool(Procedure procedure) {
        return new ToolId("t" + next(procedure));
    }

    /** For a new supply. */
    public static SupplyId supply(Procedure procedure) {
        return new SupplyId("u" + next(procedure));
    }

    private static int next(Procedure procedure) {
        return procedure.lastNumber() + 1;
    }
}
