package counterstep.edit;

import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.model.SupplyId;
import counterstep.model.ToolId;

/**
 * Ids that were never given in a document: a letter for the kind and the next free number. One of
 * these gives several ids for one edit, each another.
 */
public final class FreshIds {
    private int last;

    private FreshIds(int last) {
        this.last = last;
    }

    /** Begins after all that a document ever gave. */
    public static FreshIds after(Procedure procedure) {
        return new FreshIds(procedure.lastNumber());
    }

    /** For one more step. */
    public StepId step() {
        return new StepId("s" + ++last);
    }

    /** For one more item of the same kind as {@code sample}. */
    public ItemId item(Item sample) {
        return new ItemId(sample.match(ItemLetter.INSTANCE) + ++last);
    }

    /** For one more tool. */
    public ToolId tool() {
        return new ToolId("t" + ++last);
    }

    /** For one more supply. */
    public SupplyId supply() {
        return new SupplyId("u" + ++last);
    }

    /** For one more photo. */
    public PhotoId photo() {
        return new PhotoId("p" + ++last);
    }

    /** For a new step. */
    public static StepId step(Procedure procedure) {
        return after(procedure).step();
    }

    /** For a new item of the same kind as {@code sample}. */
    public static ItemId item(Procedure procedure, Item sample) {
        return after(procedure).item(sample);
    }

    /** For a new tool. */
    public static ToolId tool(Procedure procedure) {
        return after(procedure).tool();
    }

    /** For a new supply. */
    public static SupplyId supply(Procedure procedure) {
        return after(procedure).supply();
    }
}
