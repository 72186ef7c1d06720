package counterstep.model;

import java.util.List;
import java.util.Optional;

/**
 * One verb on one item inside a step; actions of a step run in their listed order.
 *
 * @param verb what is done
 * @param item to what; only verbs without state may name none
 * @param count how many of the item, 1 or more; a missing count was fixed when read
 * @param fingerTight reinstall or fit new: seated, the part can still be moved
 * @param aside fit new of a part: not on its place but beside it, to be returned
 * @param tool the tool of this action, if other than the step's
 * @param torque tightening torque of this action in newton metres
 * @param reading what is to be noted, measured or judged, with its limit; may be empty
 * @param waiting the wait this action brings: a wait, a dwell after pressing, a discharge
 * @param poweredTest part of a marked powered test
 * @param supplies what it uses up
 * @param remark a few words on how: 'latch up first'; may be empty
 * @param extras unknown fields
 */
public record Action(
        Verb verb,
        Optional<ItemId> item,
        int count,
        boolean fingerTight,
        boolean aside,
        Optional<ToolId> tool,
        Optional<Torque> torque,
        String reading,
        Optional<Wait> waiting,
        boolean poweredTest,
        List<SupplyUse> supplies,
        String remark,
        Extras extras) {
    /** Refuses a count below 1 and a verb with state that names no item; copies the list. */
    public Action {
        Require.atLeast(1, count, "a count");
        if (item.isEmpty() && !verb.stateless()) {
            throw new IllegalArgumentException("'" + verb.word() + "' names no item");
        }
        supplies = List.copyOf(supplies);
    }

    /** A plain action: nothing but verb, item and count. */
    public static Action of(Verb verb, ItemId item, int count) {
        return of(verb, Optional.of(item), count);
    }

    /** A plain action that may name no item. */
    public static Action of(Verb verb, Optional<ItemId> item, int count) {
        return new Action(
                verb,
                item,
                count,
                false,
                false,
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                false,
                List.of(),
                "",
                Extras.NONE);
    }

    /** The same action of another count. */
    public Action withCount(int newCount) {
        return new Action(
                verb,
                item,
                newCount,
                fingerTight,
                aside,
                tool,
                torque,
                reading,
                waiting,
                poweredTest,
                supplies,
                remark,
                extras);
    }

    /** The same action, seated finger-tight or not. */
    public Action withFingerTight(boolean seatedOnly) {
        return new Action(
                verb,
                item,
                count,
                seatedOnly,
                aside,
                tool,
                torque,
                reading,
                waiting,
                poweredTest,
                supplies,
                remark,
                extras);
    }

    /** The same action with another tool, or with the step's. */
    public Action withTool(Optional<ToolId> newTool) {
        return new Action(
                verb,
                item,
                count,
                fingerTight,
                aside,
                newTool,
                torque,
                reading,
                waiting,
                poweredTest,
                supplies,
                remark,
                extras);
    }

    /** The same action with another torque, or with the one of its set. */
    public Action withTorque(Optional<Torque> newTorque) {
        return new Action(
                verb,
                item,
                count,
                fingerTight,
                aside,
                tool,
                newTorque,
                reading,
                waiting,
                poweredTest,
                supplies,
                remark,
                extras);
    }

    /** The same action with another wait, or none. */
    public Action withWaiting(Optional<Wait> newWaiting) {
        return new Action(
                verb,
                item,
                count,
                fingerTight,
                aside,
                tool,
                torque,
                reading,
                newWaiting,
                poweredTest,
                supplies,
                remark,
                extras);
    }

    /** The same action using up other supplies. */
    public Action withSupplies(List<SupplyUse> newSupplies) {
        return new Action(
                verb,
                item,
                count,
                fingerTight,
                aside,
                tool,
                torque,
                reading,
                waiting,
                poweredTest,
                newSupplies,
                remark,
                extras);
    }
}
