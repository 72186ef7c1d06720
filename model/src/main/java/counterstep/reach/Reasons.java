package counterstep.reach;

import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Why a step is left out, in one clause. */
final class Reasons {
    private final Procedure whole;
    private final Work work;
    private final Needed needed;
    private final String target;

    Reasons(Procedure whole, Work work, Needed needed, List<ItemId> items) {
        this.whole = whole;
        this.work = work;
        this.needed = needed;
        this.target = InTheWay.names(whole, Set.copyOf(items));
    }

    String of(StepId step) {
        if (work.unattached(step)) {
            return "it names no item, and no needed step is linked after it";
        }
        Set<ItemId> untouched = new LinkedHashSet<>(work.items(step));
        untouched.removeAll(needed.touched());
        if (untouched.size() == work.items(step).size()) {
            return InTheWay.names(whole, untouched) + stay(untouched);
        }
        return work.changed(step).isEmpty()
                ? "more would have to come off for it"
                : target + " can be reached without it";
    }

    private String stay(Set<ItemId> items) {
        int pieces = items.stream().mapToInt(item -> whole.item(item).quantity()).sum();
        return pieces == 1 ? " stays as it is" : " stay as they are";
    }
}
