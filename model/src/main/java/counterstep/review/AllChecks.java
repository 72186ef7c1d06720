package counterstep.review;

import counterstep.check.Check;
import counterstep.check.completeness.CompletenessChecks;
import counterstep.check.equipment.EquipmentChecks;
import counterstep.check.safety.SafetyChecks;
import counterstep.check.sequence.SequenceChecks;
import counterstep.check.wording.WordingChecks;
import java.util.List;
import java.util.stream.Stream;

/** The list of all checks. */
public final class AllChecks {
    private AllChecks() {}

    /** Every check, group by group, in the order in which users see them. */
    public static List<Check> list() {
        return Stream.concat(
                        ofTheWork().stream(),
                        Stream.of(new NoSuchCheck(), new WaiverNoLongerApplies()))
                .toList();
    }

    /** The checks of what is done, with what, and in which words; they need no other's findings. */
    static List<Check> ofTheWork() {
        return Stream.of(
                        CompletenessChecks.all(),
                        SequenceChecks.all(),
                        SafetyChecks.all(),
                        EquipmentChecks.all(),
                        WordingChecks.all())
                .flatMap(List::stream)
                .toList();
    }
}
