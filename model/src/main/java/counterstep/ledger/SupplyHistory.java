package counterstep.ledger;

import java.util.ArrayList;
import java.util.List;

/**
 * What happens to one energy source, as places in the replay, from 0.
 *
 * @param isolated actions by which it ceases to be live
 * @param restored actions by which it is live again
 * @param touches actions on what it feeds, which ask it to be isolated
 */
public record SupplyHistory(List<Integer> isolated, List<Integer> restored, List<Integer> touches) {
    static SupplyHistory none() {
        return new SupplyHistory(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    }

    SupplyHistory copy() {
        return new SupplyHistory(
                List.copyOf(isolated), List.copyOf(restored), List.copyOf(touches));
    }
}
