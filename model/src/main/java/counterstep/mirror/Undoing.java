package counterstep.mirror;

import counterstep.model.StepId;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which steps undo which. */
final class Undoing {
    private final Map<StepId, Set<StepId>> backs = new LinkedHashMap<>();
    private final Map<StepId, Set<StepId>> offs = new LinkedHashMap<>();

    Undoing(List<Pair> pairs) {
        pairs.forEach(pair -> pair.back().ifPresent(back -> add(pair.off(), back)));
    }

    void add(StepId off, StepId back) {
        backs.computeIfAbsent(off, step -> new LinkedHashSet<>()).add(back);
        offs.computeIfAbsent(back, step -> new LinkedHashSet<>()).add(off);
    }

    /** The steps that undo some of a step. */
    Set<StepId> backs(StepId off) {
        return backs.getOrDefault(off, Set.of());
    }

    /** The steps that a step undoes some of. */
    Set<StepId> offs(StepId back) {
        return offs.getOrDefault(back, Set.of());
    }
}
