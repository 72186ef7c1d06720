package counterstep.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Trial;
import counterstep.model.Tried;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class SetStandingTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId SECOND = new StepId("s2");
    private static final Standing DONE =
            new Standing(Trial.DONE, "R. Sandvik", "B3-17", "2026-01-21");

    private final Procedure written =
            Procedure.titled("pump", "Pump")
                    .draft()
                    .steps(
                            List.of(
                                    Step.titled(FIRST, Phase.TEARDOWN, "Screws out"),
                                    Step.titled(SECOND, Phase.TEARDOWN, "Lid off")))
                    .procedure();

    @Test
    void onlyTheNamedStepsAreTried() {
        Procedure tried = new SetStanding(Set.of(SECOND), DONE).apply(written);
        assertEquals(Standing.WRITTEN, tried.step(FIRST).standing());
        assertEquals(DONE, tried.step(SECOND).standing());
        assertEquals("1 of 2 done on the device", Tried.of(tried).words());
    }

    @Test
    void anEditTakesATriedStepBackToWritten() {
        Procedure tried = new SetStanding(Set.of(FIRST, SECOND), DONE).apply(written);
        Procedure changed =
                new ChangeStep(
                                tried.step(FIRST).draft().text("Take out 4 screws.").step(),
                                "Change text")
                        .apply(tried);
        assertEquals(Standing.WRITTEN, changed.step(FIRST).standing());
        assertEquals(DONE, changed.step(SECOND).standing());
        Procedure renamed = new RenameStep(SECOND, "Lid away").apply(changed);
        assertEquals("not tried yet", Tried.of(renamed).words());
    }

    @Test
    void walkedThroughIsCountedApart() {
        Standing walked = new Standing(Trial.WALKED_THROUGH, "A. Holm", "", "2026-01-20");
        Procedure tried =
                new SetStanding(Set.of(FIRST), walked)
                        .apply(new SetStanding(Set.of(SECOND), DONE).apply(written));
        assertEquals("1 walked through, 1 of 2 done on the device", Tried.of(tried).words());
    }
}
