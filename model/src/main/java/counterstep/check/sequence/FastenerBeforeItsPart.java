package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.Severity;
import java.util.stream.Stream;

/** What holds a part is put back when the part is on its place, not before. */
final class FastenerBeforeItsPart implements Check {
    @Override
    public About about() {
        return new About(
                "fastener-before-its-part",
                Severity.ERROR,
                "Fasteners, clips, ties or joints are put back before the part they hold.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return TooEarly.holders(facts, about());
    }
}
