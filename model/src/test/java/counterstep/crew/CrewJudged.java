package counterstep.crew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.crew.CrewTimetable.PickUp;
import counterstep.crew.CrewTimetable.Work;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.plan.Durations;
import counterstep.toolchange.Tooling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks at a crew's timetable with nothing but the document beside it. */
final class CrewJudged {
    private CrewJudged() {}

    static void assertPossible(Procedure procedure, CrewTimetable timetable, ToolTime toolTime) {
        Map<StepId, Work> works = new HashMap<>();
        timetable.works().forEach(work -> works.put(work.step(), work));
        assertEquals(procedure.steps().size(), works.size(), "every step once");
        int end = 0;
        for (Step step : procedure.steps()) {
            Work work = works.get(step.id());
            assertTrue(work.start() >= 0);
            assertTrue(
                    work.end() - work.start() >= 10 * Durations.seconds(step), "no time is lost");
            boolean asked = !step.secondPerson().isEmpty() && step.seconds().orElse(0) > 0;
            assertEquals(asked, work.holder().isPresent(), "somebody holds");
            end = Math.max(end, work.end());
        }
        assertEquals(end, timetable.tenths());
        for (Link link : procedure.links()) {
            assertTrue(
                    works.get(link.before()).end() <= works.get(link.after()).start(),
                    () -> "too soon: " + link);
        }
        assertHelperHoldsOneAtATime(timetable);
        for (int person = 1; person <= timetable.crew().technicians(); person++) {
            assertHands(procedure, timetable, person, toolTime);
        }
    }

    private static void assertHelperHoldsOneAtATime(CrewTimetable timetable) {
        int free = 0;
        for (Work work : timetable.works()) {
            if (work.holder().filter(holder -> holder.technician().isEmpty()).isPresent()) {
                assertTrue(timetable.crew().secondHolds(), "there is somebody who holds");
                assertTrue(work.start() >= free, "the second person holds two things");
                free = work.handsEnd();
            }
        }
    }

    /** Hands are in one place at a time, and a tool that changes takes its time before the work. */
    private static void assertHands(
            Procedure procedure, CrewTimetable timetable, int person, ToolTime toolTime) {
        Tooling tooling = Tooling.of(procedure);
        List<Work> theirs = new ArrayList<>(timetable.of(person));
        theirs.sort(Comparator.comparingInt(Work::start).thenComparingInt(Work::handsEnd));
        int free = 0;
        int changes = 0;
        Optional<Tool> held = Optional.empty();
        for (Work work : theirs) {
            List<Tool> tools =
                    work.person() == person
                            ? tooling.inTurn(procedure.step(work.step()))
                            : List.of();
            boolean change = !tools.isEmpty() && !held.equals(Optional.of(tools.get(0)));
            changes += change ? 1 : 0;
            int ready = free + (change ? toolTime.tenths() : 0);
            if (work.handsEnd() > work.start() || !tools.isEmpty()) {
                assertTrue(work.start() >= ready, () -> person + " is not free for " + work);
                free = work.handsEnd();
            }
            held = tools.isEmpty() ? held : Optional.of(tools.get(tools.size() - 1));
        }
        List<PickUp> taken =
                timetable.pickUps().stream().filter(one -> one.person() == person).toList();
        assertEquals(changes, taken.size());
        taken.forEach(one -> assertEquals(toolTime.tenths(), one.end() - one.start()));
        taken.forEach(one -> assertTrue(one.start() >= 0));
    }
}
