package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Fix;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class NoSuchCheckTest {
    private static Procedure setting(String check) {
        CheckSetting setting = new CheckSetting(check, Optional.empty(), "so", Extras.NONE);
        return Sketch.of().step("check").procedure().draft().settings(List.of(setting)).procedure();
    }

    private static Procedure waiver(String check, String step) {
        Waiver waiver =
                new Waiver(
                        check,
                        List.of(new StepId(step)),
                        List.of(),
                        "so",
                        "R. Weir",
                        "2026-01-01",
                        Extras.NONE);
        return Sketch.of().step("check").procedure().draft().waivers(List.of(waiver)).procedure();
    }

    @Test
    void aSettingOfAMistypedCheckIsNamed() {
        assertEquals(
                List.of(
                        "no-such-check [] []"
                                + " There is no check 'left-lose', which a setting names."),
                Found.in(setting("left-lose")));
    }

    @Test
    void aWaiverOfAMistypedCheckIsNamedWithWhatIsStillThereOfItsPlace() {
        assertEquals(
                List.of(
                        "no-such-check [s1] [] There is no check 'left-lose',"
                                + " of which R. Weir accepts a finding."),
                Found.in(waiver("left-lose", "s1")));
        assertEquals(
                List.of(
                        "no-such-check [] [] There is no check 'left-lose',"
                                + " of which R. Weir accepts a finding."),
                Found.in(waiver("left-lose", "s9")));
    }

    @Test
    void aSettingOfAKnownCheckIsFine() {
        assertEquals(List.of(), Found.in(setting("left-loose")));
        assertEquals(List.of(), Found.in(setting("no-such-check")));
    }

    @Test
    void theFixDropsWhatNamesIt() {
        for (Procedure procedure : List.of(setting("left-lose"), waiver("left-lose", "s1"))) {
            Mending mending = Mending.of(procedure);
            assertEquals(List.of(), mending.review().findings());
            assertEquals(List.of(), mending.procedure().settings());
            assertEquals(List.of(), mending.procedure().waivers());
        }
        assertEquals(
                List.of("Drop the setting"),
                Mending.of(setting("left-lose")).mended().stream()
                        .map(Mending.Mended::fix)
                        .map(Fix::name)
                        .toList());
    }
}
