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

    static void assertPhasesInOrder(Procedure procedure, CrewTimetable timetable) {
        for (Work earlier : timetable.works()) {
            for (Work later : timetable.works()) {
                if (procedure
                                .step(earlier.step())
                                .phase()
                                .compareTo(procedure.step(later.step()).phase())
                        < 0) {
                    assertTrue(earlier.end() <= later.start(), () -> "too soon: " + later);
                }
            }
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

    /** Hands are in one place at a time, and the tool that work asks for is in them. */
    private static void assertHands(
            Procedure procedure, CrewTimetable timetable, int person, ToolTime toolTime) {
        Tooling tooling = Tooling.of(procedure);
        List<Work> theirs = new ArrayList<>(timetable.of(person));
        theirs.sort(Comparator.comparingInt(Work::start).thenComparingInt(Work::handsEnd));
        List<PickUp> taken =
                timetable.pickUps().stream().filter(one -> one.person() == person).toList();
        int free = 0;
        int inUse = 0;
        int changes = 0;
        Optional<Tool> held = Optional.empty();
        for (Work work : theirs) {
            List<Tool> tools =
                    work.person() == person
                            ? tooling.inTurn(procedure.step(work.step()))
                            : List.of();
            if (!tools.isEmpty() && !held.equals(Optional.of(tools.get(0)))) {
                PickUp next = taken.get(changes++);
                assertEquals(tools.get(0), next.tool());
                assertEquals(toolTime.tenths(), next.end() - next.start());
                assertTrue(next.start() >= inUse && next.end() <= work.start(), () -> "" + next);
            }
            if (work.handsEnd() > work.start() || !tools.isEmpty()) {
                int ready = free;
                assertTrue(work.start() >= ready, () -> person + " is not free for " + work);
                free = work.handsEnd();
            }
            inUse = tools.isEmpty() ? inUse : work.handsEnd();
            held = tools.isEmpty() ? held : Optional.of(tools.get(tools.size() - 1));
        }
        assertEquals(changes, taken.size());
        taken.forEach(one -> assertFree(one, theirs));
    }

    private static void assertFree(PickUp pickUp, List<Work> theirs) {
        for (Work work : theirs) {
            boolean apart =
                    work.handsEnd() == work.start()
                            || work.handsEnd() <= pickUp.start()
                            || pickUp.end() <= work.start();
            assertTrue(apart, () -> pickUp + " during " + work);
        }
    }
}
