package counterstep.check;

import counterstep.ledger.Happening;
import counterstep.ledger.ItemState;
import counterstep.model.StepId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * Which changes of a count stay without their opposite; a putting back belongs to the latest taking
 * off still open.
 */
final class Unpaired {
    private final Deque<StepId> open = new ArrayDeque<>();
    private final Set<StepId> tooMany = new LinkedHashSet<>();

    Unpaired(List<Happening> happenings, ToIntFunction<ItemState> count) {
        for (Happening happening : happenings) {
            int change = count.applyAsInt(happening.after()) - count.applyAsInt(happening.before());
            for (int one = 0; one < change; one++) {
                open.push(happening.step());
            }
            for (int one = 0; one < -change; one++) {
                if (open.isEmpty()) {
                    tooMany.add(happening.step());
                } else {
                    open.pop();
                }
            }
        }
    }

    /** Steps that take off what nothing puts back, in page order. */
    List<StepId> takenOff() {
        Set<StepId> steps = new LinkedHashSet<>();
        open.descendingIterator().forEachRemaining(steps::add);
        return List.copyOf(steps);
    }

    /** Steps that put back what was not off. */
    List<StepId> putBackTooMany() {
        return List.copyOf(tooMany);
    }
}
