package counterstep.check;

import counterstep.ledger.Failure;
import counterstep.ledger.Happening;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One failed condition with the action it stopped.
 *
 * @param place of the action in the replay, from 0
 * @param happening the action
 * @param failure the condition
 */
public record Failed(int place, Happening happening, Failure failure) {
    /** The same failures in groups of one key each, in order of their first. */
    public static <K> Collection<List<Failed>> grouped(
            Collection<Failed> failures, Function<Failed, K> key) {
        Map<K, List<Failed>> groups =
                failures.stream()
                        .collect(
                                Collectors.groupingBy(
                                        key, LinkedHashMap::new, Collectors.toList()));
        return groups.values();
    }

    /** The steps of some failures. */
    public static List<StepId> steps(Collection<Failed> failures) {
        return failures.stream().map(Failed::step).distinct().toList();
    }

    /** The step it happens in. */
    public StepId step() {
        return happening.step();
    }

    /** The action's own item. */
    public ItemId item() {
        return happening.what().item().orElseThrow();
    }

    /** The item whose state is wrong. */
    public ItemId about() {
        return failure.about();
    }
}
