package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Index;
import counterstep.model.ItemId;
import java.util.List;
import java.util.stream.Stream;

/**
 * What actions ask of items other than their own, by the facts on items; beside the precondition of
 * the verb itself.
 */
public final class Needs {
    /**
     * One condition.
     *
     * @param kind which; a precondition where the verb itself looks at another item
     * @param about the item whose state matters
     * @param looseIsEnough whether fasteners that are loose meet it as well
     */
    public record Need(FailureKind kind, ItemId about, boolean looseIsEnough) {}

    private final Index index;
    private final Surroundings around;
    private final Conditions conditions;

    private Needs(Index index) {
        this.index = index;
        this.around = new Surroundings(index.procedure().items());
        this.conditions = new Conditions(index, around);
    }

    /** The needs of the actions of a document. */
    public static Needs of(Index index) {
        return new Needs(index);
    }

    /** What an action asks; nothing where it names no item. */
    public Stream<Need> of(Action action) {
        return action.item().map(index::item).stream()
                .flatMap(item -> conditions.of(action, item))
                .map(Needs::need)
                .distinct();
    }

    /** A source and those it hangs on, nearest first; stops where they hang on each other. */
    public List<EnergySource> chain(EnergySource source) {
        return around.chain(source);
    }

    private static Need need(Demand demand) {
        boolean loose =
                demand.kind() == FailureKind.PRECONDITION
                        || demand.terms().contains(Term.plus(Counter.LOOSE));
        return new Need(demand.kind(), demand.about(), loose);
    }
}
