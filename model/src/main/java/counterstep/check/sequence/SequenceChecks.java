package counterstep.check.sequence;

import counterstep.check.Check;
import java.util.List;

/** The checks of the order of steps. */
public final class SequenceChecks {
    private SequenceChecks() {}

    /** All of them, in the order in which users see them. */
    public static List<Check> all() {
        return List.of(
                new ActionNotPossible(),
                new WorksUnderACover(),
                new ClosedOverUnfinished(),
                new PartStillHeld(),
                new PartStillTethered(),
                new FastenerBeforeItsPart(),
                new ConnectorBeforeItsPart(),
                new DisturbedBeforeNoted(),
                new LoopInTheLinks(),
                new PageOrderBreaksALink(),
                new LinkImpliedAlready());
    }
}
