package counterstep.ledger;

import java.util.List;

/**
 * What one action asks and does.
 *
 * @param demands what it asks, its own precondition first
 * @param effects what it does, in order
 */
record Row(List<Demand> demands, List<Effect> effects) {
    /** A verb that asks nothing of its item and changes nothing. */
    static final Row NOTHING = new Row(List.of(), List.of());

    Row {
        demands = List.copyOf(demands);
        effects = List.copyOf(effects);
    }
}
