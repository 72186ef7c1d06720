package counterstep.implied;

import counterstep.model.LinkEnds;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The links found so far, each with the first reason found for it. Between two actions of one step
 * there is no link: they run in their listed order.
 */
sealed class Links permits BroughtThere {
    private final Map<LinkEnds, String> reasons = new LinkedHashMap<>();

    /** Links the steps of two actions, of which one stands earlier on the page. */
    void add(Act earlier, Act later, Supplier<String> reason) {
        if (!earlier.step().equals(later.step())) {
            reasons.computeIfAbsent(
                    new LinkEnds(earlier.step(), later.step()), ends -> reason.get());
        }
    }

    /** Keeps an action between what brings a piece to some places and what takes it from them. */
    void between(Piece piece, Set<Place> wanted, Act act, Supplier<String> reason) {
        piece.broughtTo(wanted, act).ifPresent(before -> add(before, act, reason));
        piece.takenFrom(wanted, act).ifPresent(after -> add(act, after, reason));
    }

    /** The links with their reasons. */
    Map<LinkEnds, String> reasons() {
        return reasons;
    }
}
