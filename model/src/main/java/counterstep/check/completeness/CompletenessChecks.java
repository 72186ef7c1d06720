package counterstep.check.completeness;

import counterstep.check.Check;
import java.util.List;

/** The checks that everything ends as it began. */
public final class CompletenessChecks {
    private CompletenessChecks() {}

    /** All of them, in the order in which users see them. */
    public static List<Check> all() {
        return List.of(
                new NeverPutBack(),
                new PutBackMoreThanRemoved(),
                new LeftLoose(),
                new LeftOpen(),
                new LeftAside(),
                new LeftOnTheMat(),
                new RenewedItemPutBackOld(),
                new NotedButNotRestored(),
                new RestoredWithoutNote(),
                new PowerNotRestored(),
                new NotTriedAtTheEnd());
    }
}
