package counterstep.mirror;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The pairs of a document gathered by steps. */
final class Counterparts {
    /** Two steps, one of which undoes some of the other. */
    record Ends(StepId off, StepId back) {}

    private record Taken(StepId off, ItemId item) {}

    private final Map<Ends, Map<ItemId, Integer>> joined = new LinkedHashMap<>();
    private final Map<Ends, Integer> firstReturns = new LinkedHashMap<>();
    private final Map<StepId, Map<ItemId, Integer>> missing = new LinkedHashMap<>();

    Counterparts(List<Pair> pairs) {
        Set<Taken> returned = new HashSet<>();
        Set<ItemId> removed = new HashSet<>();
        pairs.stream()
                .filter(pair -> pair.offVerb() == Verb.REMOVE)
                .forEach(pair -> removed.add(pair.item()));
        for (Pair pair : pairs) {
            Taken taken = new Taken(pair.off(), pair.item());
            if (pair.back().isPresent()) {
                Ends ends = new Ends(pair.off(), pair.back().get());
                add(joined.computeIfAbsent(ends, key -> new LinkedHashMap<>()), pair);
                if (returned.add(taken)) {
                    firstReturns.merge(ends, 1, Integer::sum);
                }
            } else if (!returned.contains(taken) && !toldByRemoval(pair, removed)) {
                add(missing.computeIfAbsent(pair.off(), key -> new LinkedHashMap<>()), pair);
            }
        }
    }

    /** Loosened first and then taken out: the empty place of the removal tells it. */
    private static boolean toldByRemoval(Pair pair, Set<ItemId> removed) {
        return pair.offVerb() == Verb.LOOSEN && removed.contains(pair.item());
    }

    /**
     * Of two pairs of one item between the same steps, loosened and taken out, the larger counts.
     */
    private static void add(Map<ItemId, Integer> items, Pair pair) {
        items.merge(pair.item(), pair.count(), Math::max);
    }

    /** How many items come back first in that step, by steps. */
    Map<Ends, Integer> firstReturns() {
        return firstReturns;
    }

    /** Steps that are joined, with what joins them. */
    Map<Ends, Map<ItemId, Integer>> joined() {
        return joined;
    }

    /** What a step takes off and nothing puts back, not even in part; may be empty. */
    List<RungItem> missing(StepId off) {
        return items(missing.getOrDefault(off, Map.of()));
    }

    static List<RungItem> items(Map<ItemId, Integer> counts) {
        return counts.entrySet().stream()
                .map(entry -> new RungItem(entry.getKey(), entry.getValue()))
                .toList();
    }
}
