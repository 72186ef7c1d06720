package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.Severity;
import java.util.stream.Stream;

/** A lead is closed when its part is near: on its place or beside it. */
final class ConnectorBeforeItsPart implements Check {
    @Override
    public About about() {
        return new About(
                "connector-before-its-part",
                Severity.ERROR,
                "A connector or lead is closed while its part is still away.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return TooEarly.leads(facts, about());
    }
}
