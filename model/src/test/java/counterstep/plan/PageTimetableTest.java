package counterstep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import counterstep.model.Wait;
import counterstep.plan.PageTimetable.Bar;
import counterstep.plan.PageTimetable.Pause;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class PageTimetableTest {
    private static Step step(String id, OptionalInt hands, Wait... waits) {
        List<Action> actions =
                List.of(waits).stream()
                        .map(
                                wait ->
                                        Action.of(Verb.WAIT, Optional.empty(), 1)
                                                .draft()
                                                .waiting(Optional.of(wait))
                                                .action())
                        .toList();
        return Step.titled(new StepId(id), Phase.TEARDOWN, id)
                .draft()
                .seconds(hands)
                .actions(actions)
                .step();
    }

    private static PageTimetable timetable(Step... steps) {
        return PageTimetable.of(
                Procedure.titled("pump", "Pump").draft().steps(List.of(steps)).procedure());
    }

    @Test
    void laysStepsEndToEndInPageOrderAndWaitsAfterTheHands() {
        PageTimetable timetable =
                timetable(
                        step("s1", OptionalInt.of(30)),
                        step(
                                "s2",
                                OptionalInt.of(20),
                                new Wait(300, Attendance.WATCHED),
                                new Wait(60, Attendance.UNATTENDED)),
                        step("s3", OptionalInt.of(5)));
        assertEquals(
                List.of(
                        new Bar(new StepId("s1"), 0, 30, List.of()),
                        new Bar(
                                new StepId("s2"),
                                30,
                                50,
                                List.of(
                                        new Pause(Attendance.WATCHED, 50, 350),
                                        new Pause(Attendance.UNATTENDED, 350, 410))),
                        new Bar(new StepId("s3"), 410, 415, List.of())),
                timetable.bars());
        assertEquals(415, timetable.seconds());
        assertEquals(300, timetable.seconds(Attendance.WATCHED));
        assertEquals(60, timetable.seconds(Attendance.UNATTENDED));
    }

    @Test
    void aStepWithoutTimeHasABarWithoutLength() {
        assertEquals(
                List.of(new Bar(new StepId("s1"), 0, 0, List.of())),
                timetable(step("s1", OptionalInt.empty())).bars());
    }

    @Test
    void anEmptyDocumentTakesNoTime() {
        assertEquals(0, timetable().seconds());
    }

    @Test
    void aSumBeyondWhatIsCountedEndsAtTheGreatestNumber() {
        Wait forever = new Wait(Integer.MAX_VALUE, Attendance.UNATTENDED);
        PageTimetable timetable =
                timetable(step("s1", OptionalInt.of(9), forever), step("s2", OptionalInt.of(9)));
        assertEquals(Integer.MAX_VALUE, timetable.seconds());
        assertEquals(Integer.MAX_VALUE, timetable.bars().get(1).start());
    }
}
