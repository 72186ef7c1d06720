package counterstep.review;

import counterstep.check.Check;
import java.util.List;

/**
 * Checks that belong together.
 *
 * @param name as users see it
 * @param checks in the order in which users see them
 */
public record CheckGroup(String name, List<Check> checks) {
    /** Copies the list. */
    public CheckGroup {
        checks = List.copyOf(checks);
    }

    /** Whether it contains the check of that id. */
    boolean has(String id) {
        return checks.stream().anyMatch(check -> check.about().id().equals(id));
    }
}
