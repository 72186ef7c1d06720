package counterstep.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** The states of one item, by the page that brought each. */
final class Timeline {
    private record Change(int page, ItemState state) {}

    private final ItemState start;
    private final List<Change> changes = new ArrayList<>();

    Timeline(ItemState start) {
        this.start = start;
    }

    void add(int page, ItemState state) {
        changes.add(new Change(page, state));
    }

    ItemState start() {
        return start;
    }

    ItemState end() {
        return changes.isEmpty() ? start : changes.get(changes.size() - 1).state();
    }

    /** The state when the step of that page is done. */
    ItemState after(int page) {
        int place = changesUpTo(page);
        return place == 0 ? start : changes.get(place - 1).state();
    }

    private int changesUpTo(int page) {
        int low = 0;
        int high = changes.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (changes.get(middle).page() <= page) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The page from which on the count has been above 0 up to {@code page}; it is so there. */
    int since(int page, ToIntFunction<ItemState> count) {
        int place = changesUpTo(page);
        int since = page;
        while (place > 0 && count.applyAsInt(changes.get(place - 1).state()) > 0) {
            since = changes.get(place - 1).page();
            place--;
        }
        return since;
    }
}
