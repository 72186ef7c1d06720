package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
     * @param item what it is about, if it names one
     * @param changed the items whose counters it changes, each once
     */
    record Deed(Action action, Row row, Optional<Item> item, List<Item> changed) {}

    private final Index index;
    private final Rules rules;
    private final List<List<Deed>> pages = new ArrayList<>();
    private final Map<ItemId, SortedSet<Integer>> acting = new HashMap<>();
    private final SortedSet<Integer> waiting = new TreeSet<>();

    private Deeds(Index index) {
        this.index = index;
        this.rules = new Rules(index);
        for (Step step : index.procedure().steps()) {
            pages.add(step.actions().stream().map(this::deed).toList());
            enter(pages.size() - 1);
        }
    }

    /** Works out what the steps of a procedure ask and do. */
    public static Deeds of(Index index) {
        return new Deeds(index);
    }

    private Deed deed(Action action) {
        Row row = rules.rowOf(action);
        List<Item> changed =
                row.effects().stream().map(Effect::item).distinct().map(index::item).toList();
        return new Deed(action, row, action.item().map(index::item), changed);
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
