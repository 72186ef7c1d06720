package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What every step asks and does, worked out once for all replays and all orders; no order of steps
 * is in it.
 */
public final class Deeds {
    /**
     * One action.
     *
     * @param action as written
     * @param row what it asks and does
     */
    record Deed(Action action, Row row) {}

    private final Index index;
    private final Rules rules;
    private final List<List<Deed>> pages = new ArrayList<>();
    private final Map<ItemId, SortedSet<Integer>> acting = new HashMap<>();
    private final SortedSet<Integer> waiting = new TreeSet<>();

    private Deeds(Index index) {
        this.index = index;
        this.rules = new Rules(index);
        for (Step step : index.procedure().steps()) {
            pages.add(
                    step.actions().stream()
                            .map(action -> new Deed(action, rules.rowOf(action)))
                            .toList());
            enter(pages.size() - 1);
        }
    }

    /** Works out what the steps of a procedure ask and do. */
    public static Deeds of(Index index) {
        return new Deeds(index);
    }

    private void enter(int page) {
        for (Deed deed : pages.get(page)) {
            for (Effect effect : deed.row().effects()) {
                acting.computeIfAbsent(effect.item(), item -> new TreeSet<>()).add(page);
            }
            if (deed.action().waiting().isPresent()) {
                waiting.add(page);
            }
        }
    }

    Index index() {
        return index;
    }

    Surroundings around() {
        return rules.around();
    }

    /** The actions of the step at a place in page order. */
    List<Deed> of(int page) {
        return pages.get(page);
    }

    /** How many steps there are. */
    int size() {
        return pages.size();
    }

    /** The places of the steps that change a counter of the item. */
    SortedSet<Integer> acting(ItemId item) {
        return acting.getOrDefault(item, new TreeSet<>());
    }

    /** The places of the steps that bring a wait. */
    SortedSet<Integer> waiting() {
        return waiting;
    }
}
