package counterstep.check.safety;

import counterstep.check.Check;
import java.util.List;

/** The checks of power and safety. */
public final class SafetyChecks {
    private SafetyChecks() {}

    /** All of them, in the order in which users see them. */
    public static List<Check> all() {
        return List.of(
                new PowerNotIsolated(),
                new PowerRestoredTooEarly(),
                new HeatWithoutLimit(),
                new HazardTooLate(),
                new NoStaticPrecaution(),
                new HeatNearACell(),
                new StrapOnLiveMains(),
                new HazardIncomplete());
    }
}
