package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class WaiverNoLongerAppliesTest {
    private static final Waiver WAIVER =
            new Waiver(
                    "left-open",
                    List.of(new StepId("s1")),
                    List.of(new ItemId("c1")),
                    "plugged in by the customer",
                    "R. Weir",
                    "2026-01-01",
                    Extras.NONE);

    private static Procedure accepting(String... steps) {
        return Sketch.of()
                .connectors("c1", 1)
                .steps(steps)
                .procedure()
                .draft()
                .waivers(List.of(WAIVER))
                .procedure();
    }

    private static Procedure set(Procedure procedure, String check) {
        CheckSetting off = new CheckSetting(check, Optional.empty(), "so", Extras.NONE);
        return procedure.draft().settings(List.of(off)).procedure();
    }

    @Test
    void theWaiverOfAMendedFindingIsNamed() {
        assertEquals(
                List.of(
                        "waiver-no-longer-applies [s1] [c1] Nothing is found any more of"
                                + " 'left open', which R. Weir accepts"
                                + " ('plugged in by the customer')."),
                Found.in(accepting("disconnect c1", "reconnect c1")));
    }

    @Test
    void aWaiverThatAcceptsSomethingIsFine() {
        List<Finding> findings = Review.of(accepting("disconnect c1")).findings();
        assertEquals(List.of("left-open"), findings.stream().map(Finding::check).toList());
        assertEquals(0, findings.stream().filter(Finding::open).count());
    }

    @Test
    void aWaiverOfACheckThatIsOffIsLeftAlone() {
        Procedure procedure = accepting("disconnect c1", "reconnect c1");
        assertEquals(List.of(), Found.in(set(procedure, "left-open")));
        assertEquals(List.of(), Found.in(set(procedure, "waiver-no-longer-applies")));
    }

    @Test
    void askedAloneItFindsTheSame() {
        Facts facts = Facts.of(accepting("disconnect c1", "reconnect c1"));
        assertEquals(
                Review.of(facts).findings(), new WaiverNoLongerApplies().examine(facts).toList());
    }

    @Test
    void theFixDropsTheWaiver() {
        Mending mending = Mending.of(accepting("disconnect c1", "reconnect c1"));
        assertEquals("Drop the waiver", mending.mended().get(0).fix().name());
        assertEquals(List.of(), mending.procedure().waivers());
        assertEquals(0, Review.of(mending.procedure()).count(Severity.HINT));
    }
}
