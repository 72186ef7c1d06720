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
        return new ActionDraft(verb, item, count).action();
    }

    /** This action as a draft, to change some of it. */
    public ActionDraft draft() {
        return new ActionDraft(this);
    }
}
