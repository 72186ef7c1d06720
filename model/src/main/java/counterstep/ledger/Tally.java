package counterstep.ledger;

import counterstep.model.Item;
import counterstep.model.ItemId;
import java.util.Arrays;
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

    private Tally(Tally other) {
        other.counters.forEach((item, row) -> counters.put(item, row.clone()));
    }

    Tally copy() {
        return new Tally(this);
    }

    /** Whether it keeps the counters of an item. */
    boolean knows(ItemId item) {
        return counters.containsKey(item);
    }

    int get(ItemId item, Counter counter) {
        return counters.get(item)[counter.ordinal()];
    }

    /** The counters of an item, by the place of each in {@link Counter}; to be read only. */
    int[] row(ItemId item) {
        return counters.get(item);
    }

    void set(ItemId item, Counter counter, int value) {
        counters.get(item)[counter.ordinal()] = value;
    }

    void apply(Effect effect) {
        int[] row = counters.get(effect.item());
        int place = effect.counter().ordinal();
        row[place] = effect.on(row[place]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Tally tally
                && counters.keySet().equals(tally.counters.keySet())
                && counters.keySet().stream()
                        .allMatch(
                                item ->
                                        Arrays.equals(
                                                counters.get(item), tally.counters.get(item)));
    }

    @Override
    public int hashCode() {
        int hash = 0;
        for (Map.Entry<ItemId, int[]> entry : counters.entrySet()) {
            hash += entry.getKey().hashCode() * 31 + Arrays.hashCode(entry.getValue());
        }
        return hash;
    }
}
