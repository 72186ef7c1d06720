package counterstep.editor.order;

import counterstep.model.StepId;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The fewest steps that, taken out and put in elsewhere, make one order of another: all but a
 * longest run that rises in both (Schensted 1961, from memory).
 */
final class MovedSteps {
    private MovedSteps() {}

    static Set<StepId> between(List<StepId> page, List<StepId> other) {
        Map<StepId, Integer> places = new HashMap<>();
        page.forEach(step -> places.put(step, places.size()));
        int[] place = other.stream().mapToInt(places::get).toArray();
        int[] before = new int[place.length];
        int[] ends = new int[place.length];
        int longest = 0;
        for (int at = 0; at < place.length; at++) {
            int length = 0;
            while (length < longest && place[ends[length]] < place[at]) {
                length++;
            }
            before[at] = length == 0 ? -1 : ends[length - 1];
            ends[length] = at;
            longest = Math.max(longest, length + 1);
        }
        Set<StepId> moved = new LinkedHashSet<>(other);
        for (int at = longest == 0 ? -1 : ends[longest - 1]; at >= 0; at = before[at]) {
            moved.remove(other.get(at));
        }
        return Collections.unmodifiableSet(moved);
    }
}
