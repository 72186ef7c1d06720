package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.Severity;
import java.util.stream.Stream;

/** A part leaves its place only when all that holds it is released. */
final class PartStillHeld implements Check {
    @Override
    public About about() {
        return new About(
                "part-still-held",
                Severity.ERROR,
                "A part is moved or taken off while something still holds it.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return StillFast.held(facts, about());
    }
}
