package counterstep.ledger;

import counterstep.model.Item;
import counterstep.model.ItemId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The counters of all items at one moment; in the device as it was found all are 0. */
final class Tally {
    private static final int WIDTH = Counter.values().length;

    private final Map<ItemId, int[]> counters = new HashMap<>();

    Tally(List<Item> items) {
        items.forEach(item -> counters.put(item.id(), new int[WIDTH]));
    }

    int get(ItemId item, Counter counter) {
        return counters.get(item)[counter.ordinal()];
    }

    void set(ItemId item, Counter counter, int value) {
        counters.get(item)[counter.ordinal()] = value;
    }

    void apply(Effect effect) {
        int[] row = counters.get(effect.item());
        int place = effect.counter().ordinal();
        row[place] = effect.on(row[place]);
    }
}
