package counterstep.check.equipment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Groups what pairs connect, directly or by others between. */
final class Clusters<T> {
    private final Map<T, T> next = new HashMap<>();

    /** Connects two, and all that is connected with them. */
    void join(T one, T other) {
        if (!joined(one, other)) {
            next.put(first(one), first(other));
        }
    }

    /** Whether two are connected. */
    boolean joined(T one, T other) {
        return first(one).equals(first(other));
    }

    private T first(T member) {
        T at = member;
        while (next.containsKey(at)) {
            at = next.get(at);
        }
        return at;
    }

    /** The groups of two or more of these, each in their order. */
    List<List<T>> among(List<T> members) {
        Map<T, List<T>> groups = new LinkedHashMap<>();
        members.forEach(
                member ->
                        groups.computeIfAbsent(first(member), fresh -> new ArrayList<>())
                                .add(member));
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }
}
