package counterstep.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.crew.ToolTime;
import counterstep.handbook.WorkTimes;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeSource;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class EstimatesTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId SECOND = new StepId("s2");

    /** The sketch, with no step of it timed. */
    private static Procedure untimed(Sketch sketch) {
        Procedure sketched = sketch.procedure();
        List<Step> steps =
                sketched.steps().stream()
                        .map(step -> step.draft().seconds(OptionalInt.empty()).step())
                        .toList();
        return sketched.draft().steps(steps).procedure();
    }

    private static Sketch recorder() {
        return Sketch.of()
                .screws("case", 3)
                .screws("set", 1)
                .part("knob")
                .part("cover")
                .connectors("plug", 1)
                .screws("holder", 2)
                .part("board");
    }

    private static double seconds(Procedure procedure, WorkTimes times) {
        return Estimates.of(procedure, times).bySteps().values().stream()
                .mapToDouble(Estimate::exactSeconds)
                .sum();
    }

    /**
     * Yang and El-Haik, Design for Six Sigma (2003), table 10.5: a pressure recorder is opened down
     * to its board in 104.3 s, three tool acquisitions and two turns of the device (4.5 s each)
     * among them. Its first screws have another operation than the later ones: 11.3 s instead of 8.
     */
    @Test
    void thePublishedWorksheetIsReckonedAlike() {
        Procedure later =
                untimed(
                        recorder()
                                .steps(
                                        "loosen set",
                                        "remove knob",
                                        "remove cover",
                                        "disconnect plug",
                                        "remove holder",
                                        "remove board"));
        Procedure first = untimed(recorder().step("remove case"));
        WorkTimes slower = WorkTimes.published().with(List.of("remove fastener set;11.3;1.4"));
        double turns = 2 * 4.5;

        double whole =
                seconds(first, slower)
                        + seconds(later, WorkTimes.published())
                        + 3 * ToolTime.PUBLISHED.seconds()
                        + turns;

        assertEquals(104.3, whole, 1e-9);
    }

    @Test
    void eachActionIsARowWithItsPiecesAndItsSource() {
        Procedure procedure = untimed(recorder().step("remove holder; disconnect plug"));

        Estimate estimate = Estimates.of(procedure, WorkTimes.published()).of(FIRST).orElseThrow();

        assertEquals(2, estimate.rows().size());
        Row screws = estimate.rows().get(0);
        assertEquals("remove holder screws", screws.what());
        assertEquals(2, screws.times());
        assertEquals(18.8, screws.seconds(), 1e-9);
        assertTrue(screws.source().contains("Yang and El-Haik (2003)"), screws.source());
        assertEquals(25, estimate.seconds(), "18.8 + 6.4 = 25.2");
    }

    @Test
    void aStepWithAnActionThatHasNoFigureIsNotGuessed() {
        Procedure procedure =
                untimed(
                        recorder()
                                .joint("glue")
                                .steps("remove knob; release glue", "remove cover"));

        Estimates estimates = Estimates.of(procedure, WorkTimes.published());

        assertEquals(Map.of(FIRST, "no figure for 'release glue joint'"), estimates.none());
        assertTrue(estimates.of(FIRST).isEmpty());
        assertEquals(4, estimates.of(SECOND).orElseThrow().seconds());
    }

    @Test
    void ownFiguresReplaceThePublishedOnesAndAddToThem() {
        Procedure procedure =
                untimed(
                        recorder()
                                .joint("glue")
                                .steps("remove knob; release glue", "remove cover"));
        WorkTimes own =
                WorkTimes.published()
                        .with(
                                List.of(
                                        "# our bench",
                                        "release joint; 90; 0",
                                        "",
                                        "remove part;5;1"));

        Estimates estimates = Estimates.of(procedure, own);

        Estimate first = estimates.of(FIRST).orElseThrow();
        assertEquals(96, first.seconds());
        assertEquals(WorkTimes.OWN, first.rows().get(0).source());
        assertTrue(estimates.source().endsWith(WorkTimes.OWN), estimates.source());
    }

    @Test
    void onlyStepsWithoutATimeAreGivenTheirEstimateAndNeverAsMeasured() {
        Procedure sketched = recorder().steps("remove knob", "remove cover").procedure();
        Step untimed = sketched.steps().get(1).draft().seconds(OptionalInt.empty()).step();
        Procedure procedure =
                sketched.draft().steps(List.of(sketched.steps().get(0), untimed)).procedure();

        UseEstimates use = Estimates.of(procedure, WorkTimes.published()).forUntimed(procedure);
        Procedure after = use.apply(procedure);

        assertEquals(Map.of(SECOND, 4), use.seconds());
        assertEquals(procedure.steps().get(0), after.steps().get(0));
        assertEquals(OptionalInt.of(4), after.steps().get(1).seconds());
        assertEquals(TimeSource.ESTIMATED, after.steps().get(1).timeSource());
    }

    @Test
    void theSharesSayWhatIsMeasuredStatedAndReckoned() {
        Procedure sketched =
                recorder()
                        .joint("glue")
                        .steps("remove knob", "wait wait 30", "remove cover", "release glue")
                        .procedure();
        List<Step> steps =
                List.of(
                        sketched.steps().get(0).draft().timeSource(TimeSource.MEASURED).step(),
                        sketched.steps().get(1),
                        sketched.steps().get(2).draft().seconds(OptionalInt.empty()).step(),
                        sketched.steps().get(3).draft().seconds(OptionalInt.empty()).step());
        Procedure procedure = sketched.draft().steps(steps).procedure();

        TimeShares shares =
                TimeShares.of(procedure, Estimates.of(procedure, WorkTimes.published()));

        List<StepId> untimed = List.of(new StepId("s3"), new StepId("s4"));
        assertEquals(new TimeShares(10, 10, 4, 30, untimed, List.of(new StepId("s4"))), shares);
    }
}
