package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.Severity;
import java.util.stream.Stream;

/** A part goes away only when its connectors and leads are open; pulled leads tear. */
final class PartStillTethered implements Check {
    @Override
    public About about() {
        return new About(
                "part-still-tethered",
                Severity.ERROR,
                "A part is taken away while a connector or lead still ties it to the device.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return StillFast.tethered(facts, about());
    }
}
