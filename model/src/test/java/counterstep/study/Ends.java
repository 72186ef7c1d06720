package counterstep.study;

import counterstep.ledger.FastenerState;
import counterstep.ledger.ItemState;
import counterstep.ledger.JointState;
import counterstep.ledger.OpenState;
import counterstep.ledger.PartState;
import counterstep.ledger.SettingState;
import counterstep.ledger.SourceState;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Part;
import counterstep.model.Verb;
import counterstep.testing.SlowLedger;
import java.util.List;
import java.util.Optional;

/** How all ends when the actions are done in an order, counted by the slow ledger. */
final class Ends {
    private final List<Item> items;
    private final List<Action> actions;
    private final SlowLedger ledger;

    Ends(List<Item> items, List<Action> actions, SlowLedger ledger) {
        this.items = items;
        this.actions = actions;
        this.ledger = ledger;
    }

    /** What does not end as it began, or as the service says. */
    Optional<String> unfinished() {
        return items.stream()
                .filter(item -> !ended(item, ledger.state(item, actions.size())) || old(item))
                .map(item -> "'" + item.name() + "' is not as it has to be at the end")
                .findFirst()
                .or(() -> tried() ? Optional.empty() : Optional.of("not tried at the end"));
    }

    private static boolean ended(Item item, ItemState state) {
        if (state instanceof FastenerState set) {
            return set.loose() == 0 && set.tight() == item.quantity() && set.onMat() == 0;
        }
        if (state instanceof PartState part) {
            return part.on() == item.quantity() && part.away() == 0 && part.onMat() == 0;
        }
        if (state instanceof OpenState open) {
            return open.open() == 0;
        }
        if (state instanceof JointState joint) {
            return joint.released() == 0 && joint.laid() == 0;
        }
        return state instanceof SettingState
                ? state != SettingState.DISTURBED
                : state == SourceState.LIVE;
    }

    /** Whether what the service renews is not thrown away and fitted new, each once. */
    private boolean old(Item item) {
        boolean renewed =
                item instanceof Part part && part.renewed()
                        || item instanceof FastenerSet set && set.renew();
        return renewed
                && (count(item, Verb.DISCARD) != item.quantity()
                        || count(item, Verb.FIT_NEW) != item.quantity());
    }

    private int count(Item item, Verb verb) {
        return actions.stream()
                .filter(action -> action.verb() == verb)
                .filter(action -> action.item().filter(item.id()::equals).isPresent())
                .mapToInt(Action::count)
                .sum();
    }

    /** Whether somebody looks at the device after the last change of its state. */
    private boolean tried() {
        for (int place = actions.size() - 1; place >= 0; place--) {
            if (actions.get(place).verb() == Verb.CHECK) {
                return true;
            }
            Verb verb = actions.get(place).verb();
            if (verb != Verb.DISCARD && !verb.stateless()) {
                return false;
            }
        }
        return true;
    }
}
