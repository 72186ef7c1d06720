package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Verb;
import java.util.List;
import java.util.stream.Stream;

/** Which verbs the table of verbs knows for an item: what a writer is offered to choose from. */
public final class FittingVerbs {
    private FittingVerbs() {}

    /** The verbs that have a meaning for the item, in the order of the table. */
    public static List<Verb> of(Item item) {
        return Stream.of(Verb.values()).filter(verb -> fits(verb, item)).toList();
    }

    /** The verbs that need no item. */
    public static List<Verb> ofNoItem() {
        return Stream.of(Verb.values()).filter(Verb::stateless).toList();
    }

    private static boolean fits(Verb verb, Item item) {
        Row row = VerbTable.row(Action.of(verb, item.id(), 1), item);
        return row.demands().stream().noneMatch(Demand::impossible);
    }
}
