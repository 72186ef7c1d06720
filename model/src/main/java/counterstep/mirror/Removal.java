package counterstep.mirror;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One action that opens something, and what has come back of it so far. */
final class Removal {
    private final ItemId item;
    private final StepId step;
    private final Verb verb;
    private final List<Pair> closed = new ArrayList<>();
    private int open;

    Removal(ItemId item, StepId step, Verb verb, int count) {
        this.item = item;
        this.step = step;
        this.verb = verb;
        this.open = count;
    }

    Verb verb() {
        return verb;
    }

    int open() {
        return open;
    }

    /** Takes back as many as are open, at most {@code wanted}; says how many. */
    int close(StepId back, int wanted) {
        int count = Math.min(open, wanted);
        if (count > 0) {
            open -= count;
            closed.add(new Pair(item, step, Optional.of(back), count, verb));
        }
        return count;
    }

    List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>(closed);
        if (open > 0) {
            pairs.add(new Pair(item, step, Optional.empty(), open, verb));
        }
        return pairs;
    }
}
