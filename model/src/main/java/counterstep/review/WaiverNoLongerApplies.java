package counterstep.review;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.DropWaiver;
import counterstep.model.CheckSetting;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.Waiver;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A waiver whose finding is gone accepts whatever turns up there later, unseen. It needs what the
 * other checks find, so a review asks it last.
 */
final class WaiverNoLongerApplies implements Check {
    private static final String ID = "waiver-no-longer-applies";

    @Override
    public About about() {
        return new About(ID, Severity.HINT, "A waiver accepts a finding that is not there.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return examine(facts, Review.of(facts).findings());
    }

    /** The same where the findings of the other checks are known already. */
    Stream<Finding> examine(Facts facts, List<Finding> found) {
        return idle(facts.procedure(), found).stream().map(waiver -> finding(facts, waiver));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return facts.procedure().waivers().stream()
                .filter(waiver -> finding(facts, waiver).message().equals(finding.message()))
                .filter(waiver -> finding(facts, waiver).sameFault(finding))
                .map(waiver -> new Fix("Drop the waiver", new DropWaiver(waiver)));
    }

    /**
     * The waivers that match no finding. A waiver of a check that is switched off may come into its
     * own again; one of an unknown check is another's to tell.
     */
    static List<Waiver> idle(Procedure procedure, List<Finding> found) {
        if (procedure.waivers().isEmpty()) {
            return List.of();
        }
        Set<String> known = NoSuchCheck.ids();
        return procedure.waivers().stream()
                .filter(waiver -> known.contains(waiver.check()) && !waiver.check().equals(ID))
                .filter(waiver -> !switchedOff(procedure, waiver.check()))
                .filter(waiver -> found.stream().noneMatch(one -> one.acceptedBy(waiver)))
                .distinct()
                .toList();
    }

    private static boolean switchedOff(Procedure procedure, String check) {
        return procedure.settings().stream()
                .filter(setting -> setting.check().equals(check))
                .map(CheckSetting::severity)
                .findFirst()
                .filter(severity -> severity.isEmpty())
                .isPresent();
    }

    private Finding finding(Facts facts, Waiver waiver) {
        WaiverPlace place = new WaiverPlace(facts.index(), waiver);
        String reason = waiver.reason().isBlank() ? "" : " ('" + waiver.reason().strip() + "')";
        return about().finding(
                        "Nothing is found any more of '%s', which %s accepts%s."
                                .formatted(waiver.check().replace('-', ' '), place.who(), reason),
                        place.steps(),
                        place.items());
    }
}
