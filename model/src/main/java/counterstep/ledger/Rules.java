package counterstep.ledger;

import counterstep.ledger.Effect.Change;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Item;
import java.util.ArrayList;
import java.util.List;

/**
 * The whole table: what an action asks and does, its own row and the conditions that the facts on
 * items bring in. It knows no order of steps.
 */
final class Rules {
    private final Index index;
    private final Surroundings around;
    private final Conditions conditions;

    Rules(Index index) {
        this.index = index;
        this.around = new Surroundings(index.procedure().items());
        this.conditions = new Conditions(index, around);
    }

    Surroundings around() {
        return around;
    }

    /** The row of an action; nothing is asked where it names no item. */
    Row rowOf(Action action) {
        return action.item().map(index::item).map(item -> rowOf(action, item)).orElse(Row.NOTHING);
    }

    private Row rowOf(Action action, Item item) {
        Row own = VerbTable.row(action, item);
        List<Demand> demands = new ArrayList<>(own.demands());
        boolean nonsense = demands.stream().anyMatch(Demand::impossible);
        if (nonsense && own.effects().isEmpty()) {
            return own;
        }
        conditions.of(action, item).forEach(demands::add);
        List<Effect> effects = new ArrayList<>(own.effects());
        if (Turn.disturbs(action.verb())) {
            around.settingsOf(item.id())
                    .forEach(
                            setting -> {
                                effects.add(disturbed(setting, Counter.DISTURBED, 1));
                                effects.add(disturbed(setting, Counter.RESTORED, 0));
                            });
        }
        return new Row(demands, effects);
    }

    private static Effect disturbed(Item setting, Counter counter, int value) {
        return new Effect(setting.id(), counter, Change.SET, value);
    }
}
