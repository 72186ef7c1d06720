package counterstep.crew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.crew.CrewTimetable.Work;
import counterstep.links.Precedence;
import counterstep.model.Attendance;
import counterstep.model.Crew;
import counterstep.model.Extras;
import counterstep.model.GroupRule;
import counterstep.model.Procedure;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.plan.Durations;
import counterstep.store.ProcedureFile;
import counterstep.testing.Networks;
import counterstep.testing.Samples;
import counterstep.toolchange.FewestToolChanges;
import counterstep.toolchange.ToolChanges;
import counterstep.toolchange.Tooling;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class CrewPlanTest {
    private static final Crew HELPED = new Crew(1, true);
    private static final ToolTime FREE = new ToolTime(0);

    private static Optional<CrewPlan> found(Procedure procedure, Crew crew, ToolTime toolTime) {
        return CrewPlan.of(procedure, Precedence.of(procedure), crew, toolTime, () -> false);
    }

    private static CrewPlan plan(Procedure procedure, Crew crew, ToolTime toolTime) {
        CrewPlan plan = found(procedure, crew, toolTime).orElseThrow();
        CrewJudged.assertPossible(procedure, plan.shortest(), toolTime);
        plan.downThePage().ifPresent(page -> CrewJudged.assertPossible(procedure, page, toolTime));
        assertTrue(plan.atLeast() <= plan.shortest().tenths() || plan.proved());
        return plan;
    }

    private static Procedure sample(String name) {
        return ProcedureFile.read(Samples.file(name));
    }

    @Test
    void oneTechnicianWorksOnBesideAWaitThatNeedsNobody() {
        Procedure glued =
                Crews.of("glue 60 wait 300; fit 20; clean 200; lid 30", "glue-fit fit-lid");
        CrewPlan plan = plan(glued, Crew.ONE, FREE);
        assertEquals(10 * (60 + 300 + 20 + 30), plan.shortest().tenths());
        assertTrue(plan.proved());
        assertEquals(10 * (60 + 300 + 20 + 200 + 30), plan.downThePage().orElseThrow().tenths());
    }

    @Test
    void aWatchedWaitKeepsItsTechnicianNearWithFreeHands() {
        Procedure heated = Crews.of("heat 10 watched 100; clean 40; lift 5", "heat-lift");
        CrewTimetable shortest = plan(heated, Crew.ONE, FREE).shortest();
        assertEquals(10 * (10 + 100 + 5), shortest.tenths());
        Work heat = shortest.works().get(0);
        assertEquals(1, heat.person());
        assertEquals(Attendance.WATCHED, heat.pauses().get(0).attendance());
        assertEquals(1000, heat.pauses().get(0).end() - heat.pauses().get(0).start());
    }

    @Test
    void stepsThatAskForASecondPersonAreNamedWhereNobodyIsLeftToHold() {
        Procedure heavy = Crews.of("lift 30 held; turn 20", "");
        assertEquals(Networks.ids("lift"), CrewPlan.unheld(heavy, Crew.ONE));
        assertTrue(found(heavy, Crew.ONE, FREE).isEmpty());
        assertEquals(500, plan(heavy, HELPED, FREE).shortest().tenths());
        Work lift =
                plan(heavy, HELPED, FREE).shortest().works().stream()
                        .filter(work -> work.step().equals(Networks.id("lift")))
                        .findFirst()
                        .orElseThrow();
        assertTrue(lift.holder().orElseThrow().technician().isEmpty(), "the second person holds");
        assertEquals(500, plan(heavy, new Crew(2, false), FREE).shortest().tenths());
        assertEquals(300, plan(heavy, new Crew(2, true), FREE).shortest().tenths());
    }

    @Test
    void downThePageWithoutWaitsEveryToolChangeTakesItsTime() {
        Procedure fan = sample(Samples.SUPPLY_FAN);
        Procedure page = Crews.withoutWaits(fan);
        int changes = ToolChanges.inPageOrder(page).count();
        CrewPlan plan = plan(page, HELPED, ToolTime.PUBLISHED);
        assertEquals(
                10 * Durations.total(page) + 42 * changes,
                plan.downThePage().orElseThrow().tenths());
    }

    @Test
    void theSamplesAreProvedForEveryCrew() {
        for (String sample : List.of(Samples.STICK_UNIT, Samples.SUPPLY_FAN)) {
            Procedure procedure = sample(sample);
            int path = CriticalPath.of(procedure, Precedence.of(procedure)).seconds();
            int before = Integer.MAX_VALUE;
            for (Crew crew : List.of(HELPED, new Crew(2, true), new Crew(3, true))) {
                CrewPlan plan = plan(procedure, crew, ToolTime.PUBLISHED);
                assertTrue(plan.proved(), sample);
                assertTrue(plan.shortest().tenths() >= 10 * path);
                assertTrue(plan.shortest().tenths() <= before, "more people are no slower");
                before = plan.shortest().tenths();
            }
        }
    }

    @Test
    void withPeopleEnoughAndToolsThatCostNothingItIsTheCriticalPath() {
        for (int run = 0; run < 100; run++) {
            Procedure network = Networks.random(12, 0.2, run);
            CrewPlan plan = plan(network, new Crew(12, false), FREE);
            int path = CriticalPath.of(network, Precedence.of(network)).seconds();
            assertEquals(10 * path, plan.shortest().tenths());
        }
    }

    @Test
    void stepsOfAGroupStayRightAfterEachOther() {
        Procedure glued =
                Crews.of("glue 60 wait 300; fit 20; clean 200; lid 30", "glue-fit fit-lid");
        Procedure grouped =
                glued.draft()
                        .groups(
                                List.of(
                                        new StepGroup(
                                                GroupRule.RIGHT_AFTER,
                                                Networks.ids("clean fit"),
                                                Extras.NONE)))
                        .procedure();
        CrewPlan plan = plan(grouped, Crew.ONE, FREE);
        assertEquals(10 * (60 + 300 + 200 + 20 + 30), plan.shortest().tenths());
        List<StepId> order = plan.shortest().works().stream().map(Work::step).toList();
        assertEquals(order.indexOf(Networks.id("clean")) + 1, order.indexOf(Networks.id("fit")));
    }

    @Test
    void aloneWithoutWaitsItTakesTheFewestToolChangesThatGroupsAndPhasesLeave() {
        int possible = 0;
        for (int run = 0; run < 300; run++) {
            Procedure procedure = Crews.ruled(8, run);
            Optional<FewestToolChanges> fewest =
                    FewestToolChanges.of(
                            procedure,
                            Precedence.of(procedure),
                            Tooling.of(procedure),
                            () -> false);
            assertEquals(fewest.isPresent(), found(procedure, HELPED, FREE).isPresent());
            if (fewest.isPresent()) {
                CrewPlan plan = plan(procedure, HELPED, ToolTime.PUBLISHED);
                int expected = 10 * Durations.total(procedure) + 42 * fewest.get().count();
                assertEquals(expected, plan.shortest().tenths(), "run " + run);
                assertTrue(plan.atLeast() <= expected, "run " + run);
                possible++;
            }
        }
        assertTrue(possible > 100, "most can be done: " + possible);
    }

    @Test
    void phasesInOrderHoldForAllPeople() {
        for (int run = 0; run < 200; run++) {
            Procedure procedure = Crews.ruled(8, run).draft().groups(List.of()).procedure();
            if (found(procedure, HELPED, FREE).isPresent()) {
                CrewPlan plan = plan(procedure, new Crew(3, true), ToolTime.PUBLISHED);
                CrewJudged.assertPhasesInOrder(procedure, plan.shortest());
            }
        }
    }

    @Test
    void aLoopHasNoTimetable() {
        Procedure loop = Networks.linked("a b", "a-b", "b-a");
        assertTrue(found(loop, Crew.ONE, FREE).isEmpty());
    }

    @Test
    void randomProceduresHaveTimetablesThatCanBeDone() {
        for (int run = 0; run < 300; run++) {
            Procedure procedure = Crews.random(10, run);
            for (Crew crew : List.of(HELPED, new Crew(2, false), new Crew(3, true))) {
                plan(procedure, crew, ToolTime.PUBLISHED);
            }
        }
    }

    @Test
    void aSearchThatIsStoppedSaysNoMoreThanItKnows() {
        for (int run = 0; run < 100; run++) {
            Procedure procedure = Crews.random(9, run);
            Precedence precedence = Precedence.of(procedure);
            CrewPlan stopped =
                    CrewPlan.of(procedure, precedence, HELPED, ToolTime.PUBLISHED, () -> true)
                            .orElseThrow();
            CrewJudged.assertPossible(procedure, stopped.shortest(), ToolTime.PUBLISHED);
            CrewPlan whole = plan(procedure, HELPED, ToolTime.PUBLISHED);
            assertTrue(whole.proved());
            assertTrue(stopped.atLeast() <= whole.shortest().tenths());
        }
    }
}
