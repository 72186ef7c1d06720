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
        return checks(groups().stream());
    }

    /** The groups, in the order in which users see them. */
    public static List<CheckGroup> groups() {
        return Stream.concat(groupsOfTheWork(), Stream.of(review())).toList();
    }

    /** The checks of what is done, with what, and in which words; they need no other's findings. */
    static List<Check> ofTheWork() {
        return checks(groupsOfTheWork());
    }

    private static Stream<CheckGroup> groupsOfTheWork() {
        return Stream.of(
                completeness(),
                order(),
                safety(),
                new CheckGroup("Equipment", EquipmentChecks.all()),
                new CheckGroup("Words", WordingChecks.all()));
    }

    private static List<Check> checks(Stream<CheckGroup> groups) {
        return groups.flatMap(group -> group.checks().stream()).toList();
    }

    /** Looks at how items end. */
    static CheckGroup completeness() {
        return new CheckGroup("Completeness", CompletenessChecks.all());
    }

    /** Looks at what an action finds when it starts. */
    static CheckGroup order() {
        return new CheckGroup("Order", SequenceChecks.all());
    }

    /** Looks at what an action finds when it starts: power, hazards. */
    static CheckGroup safety() {
        return new CheckGroup("Power and safety", SafetyChecks.all());
    }

    /** Looks at what the others find, and at what the document says of them. */
    private static CheckGroup review() {
        return new CheckGroup("Review", List.of(new NoSuchCheck(), new WaiverNoLongerApplies()));
    }
}
