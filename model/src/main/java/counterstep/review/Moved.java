package counterstep.review;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The fewest steps that must have been moved to get from one page order to another. */
final class Moved {
    private Moved() {}

    static List<StepId> between(Procedure before, Procedure after) {
        Set<StepId> old = before.steps().stream().map(Step::id).collect(Collectors.toSet());
        List<StepId> now = after.steps().stream().map(Step::id).filter(old::contains).toList();
        List<StepId> then = before.steps().stream().map(Step::id).filter(now::contains).toList();
        int[] places = now.stream().mapToInt(then::indexOf).toArray();
        List<StepId> moved = new ArrayList<>(now);
        longestRising(places).forEach(place -> moved.remove(then.get(place)));
        return moved;
    }

    /** Values of a longest rising subsequence: the steps that can stay where they are. */
    private static List<Integer> longestRising(int[] values) {
        int[] length = new int[values.length];
        int[] previous = new int[values.length];
        Arrays.fill(previous, -1);
        int best = -1;
        for (int at = 0; at < values.length; at++) {
            length[at] = 1;
            for (int earlier = 0; earlier < at; earlier++) {
                if (values[earlier] < values[at] && length[earlier] + 1 > length[at]) {
                    length[at] = length[earlier] + 1;
                    previous[at] = earlier;
                }
            }
            best = best < 0 || length[at] > length[best] ? at : best;
        }
        List<Integer> rising = new ArrayList<>();
        for (int at = best; at >= 0; at = previous[at]) {
            rising.add(values[at]);
        }
        return rising;
    }
}
