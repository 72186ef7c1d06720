package counterstep.review;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.DropWaiver;
import counterstep.edit.SetCheckSettings;
import counterstep.model.CheckSetting;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.Waiver;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A mistyped id switches nothing off and accepts nothing, and nobody would notice. */
final class NoSuchCheck implements Check {
    @Override
    public About about() {
        return new About(
                "no-such-check",
                Severity.HINT,
                "A setting or a waiver names a check that there is none of.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Set<String> known = ids();
        Procedure procedure = facts.procedure();
        return Stream.concat(
                procedure.settings().stream()
                        .filter(setting -> !known.contains(setting.check()))
                        .map(this::finding),
                procedure.waivers().stream()
                        .filter(waiver -> !known.contains(waiver.check()))
                        .map(waiver -> finding(facts, waiver)));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        Procedure procedure = facts.procedure();
        return Stream.concat(
                procedure.settings().stream()
                        .filter(setting -> finding(setting).message().equals(finding.message()))
                        .map(setting -> new Fix("Drop the setting", without(procedure, setting))),
                procedure.waivers().stream()
                        .filter(waiver -> finding(facts, waiver).equals(finding))
                        .map(waiver -> new Fix("Drop the waiver", new DropWaiver(waiver))));
    }

    private static SetCheckSettings without(Procedure procedure, CheckSetting setting) {
        return new SetCheckSettings(
                procedure.settings().stream().filter(one -> !one.equals(setting)).toList());
    }

    private Finding finding(CheckSetting setting) {
        return about().finding(
                        "There is no check '" + setting.check() + "', which a setting names.",
                        List.of(),
                        List.of());
    }

    private Finding finding(Facts facts, Waiver waiver) {
        WaiverPlace place = new WaiverPlace(facts.index(), waiver);
        return about().finding(
                        "There is no check '%s', of which %s accepts a finding."
                                .formatted(waiver.check(), place.who()),
                        place.steps(),
                        place.items());
    }

    /** The ids of all checks that there are. */
    static Set<String> ids() {
        return AllChecks.list().stream()
                .map(check -> check.about().id())
                .collect(Collectors.toSet());
    }
}
