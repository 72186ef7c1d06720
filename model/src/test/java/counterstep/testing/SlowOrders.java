package counterstep.testing;

import counterstep.ledger.FastenerState;
import counterstep.ledger.ItemState;
import counterstep.ledger.SettingState;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What fails in any of some orders, each replayed from the start by the slow ledger, with how few
 * steps are done when it fails first. An oracle.
 */
public final class SlowOrders {
    private final Procedure procedure;
    private final Map<String, Integer> failures = new TreeMap<>();

    private SlowOrders(Procedure procedure, List<List<Step>> orders) {
        this.procedure = procedure;
        orders.forEach(this::replay);
    }

    /** The failures, each 'step action KIND item' or 'end item', with the fewest steps before. */
    public static Map<String, Integer> failures(Procedure procedure, List<List<Step>> orders) {
        return new SlowOrders(procedure, orders).failures;
    }

    private void replay(List<Step> order) {
        SlowLedger ledger = new SlowLedger(procedure.draft().steps(order).procedure());
        int place = 0;
        for (int done = 0; done < order.size(); done++) {
            Step step = order.get(done);
            for (int action = 0; action < step.actions().size(); action++) {
                for (String failure : SlowConditions.failures(ledger, place)) {
                    String name = step.id() + " " + action + " " + failure;
                    failures.merge(name, done, Math::min);
                }
                place++;
            }
        }
        for (Item item : procedure.items()) {
            if (unfinished(ledger.state(item, place))) {
                failures.put("end " + item.id(), order.size());
            }
        }
    }

    private static boolean unfinished(ItemState state) {
        return state instanceof FastenerState set
                ? set.loose() > 0
                : state == SettingState.DISTURBED;
    }
}
