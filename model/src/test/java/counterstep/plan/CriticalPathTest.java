package counterstep.plan;

import static counterstep.testing.Networks.id;
import static counterstep.testing.Networks.ids;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Verb;
import counterstep.model.Wait;
import counterstep.testing.Networks;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class CriticalPathTest {
    private static CriticalPath plan(Procedure procedure) {
        return CriticalPath.of(procedure, Precedence.of(procedure));
    }

    private static Procedure timed(String steps, String... links) {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        for (String step : steps.split(" ")) {
            String[] part = step.split(":");
            seconds.put(part[0], Integer.parseInt(part[1]));
        }
        return Networks.of(seconds, List.of(links));
    }

    @Test
    void aStepLastsItsHandsTimeAndAllItsWaits() {
        Action wait = Action.of(Verb.WAIT, Optional.empty(), 1);
        Step step =
                Step.titled(id("s1"), Phase.SERVICE, "Cure")
                        .draft()
                        .seconds(OptionalInt.of(40))
                        .actions(
                                List.of(
                                        wait.draft()
                                                .waiting(waited(300, Attendance.WATCHED))
                                                .action(),
                                        wait,
                                        wait.draft()
                                                .waiting(waited(5, Attendance.UNATTENDED))
                                                .action()))
                        .step();
        assertEquals(345, Durations.seconds(step));
        assertEquals(40, Durations.handsSeconds(step));
        assertEquals(305, Durations.waitSeconds(step));
        assertEquals(0, Durations.seconds(Step.titled(id("s2"), Phase.SERVICE, "No time")));
    }

    private static Optional<Wait> waited(int seconds, Attendance attendance) {
        return Optional.of(new Wait(seconds, attendance));
    }

    @Test
    void theTotalIsTheSumInPageOrderWhateverTheLinks() {
        assertEquals(12, Durations.total(timed("a:3 b:4 c:5", "a-b")));
    }

    @Test
    void withoutLinksTheLongestStepIsTheWhole() {
        CriticalPath plan = plan(timed("a:3 b:7 c:7"));
        assertEquals(7, plan.seconds());
        assertEquals(List.of(ids("b"), ids("c")), plan.paths());
        assertFalse(plan.critical(id("a")));
        assertEquals(new StepTimes(0, 3, 4, 7, 4, 4), plan.times().get(id("a")));
    }

    @Test
    void anImpliedLinkMakesNoPathOfItsOwn() {
        CriticalPath plan = plan(timed("a:3 b:4 c:5", "a-b", "b-c", "a-c", "a-b"));
        assertEquals(List.of(ids("a b c")), plan.paths());
    }

    @Test
    void aStepOfNoTimeStandsOnThePathItLiesOn() {
        CriticalPath plan = plan(timed("start:0 a:3 none:0 b:4 end:0 beside:0", links()));
        assertEquals(List.of(ids("start a none b end")), plan.paths());
        assertTrue(plan.critical(id("none")));
        assertFalse(plan.critical(id("beside")));
    }

    private static String[] links() {
        return new String[] {"start-a", "a-none", "none-b", "b-end"};
    }

    @Test
    void stepsWithoutAnyTimeAreAllCritical() {
        CriticalPath plan = plan(timed("a:0 b:0 c:0", "a-b"));
        assertEquals(0, plan.seconds());
        assertEquals(List.of(ids("a b"), ids("c")), plan.paths());
    }

    @Test
    void noStepNoPath() {
        CriticalPath plan = plan(Procedure.titled("empty", "Empty"));
        assertEquals(new CriticalPath(0, Map.of(), List.of(), false), plan);
    }

    @Test
    void pathsAreListedInPageOrder() {
        CriticalPath plan = plan(timed("d:1 c:1 b:1 a:1", "d-b", "d-a", "c-a"));
        assertEquals(List.of(ids("d b"), ids("d a"), ids("c a")), plan.paths());
    }

    @Test
    void atMostAHundredPathsAreListedAndItIsSaidWhenThereAreMore() {
        assertEquals(64, plan(layers(6)).paths().size());
        assertFalse(plan(layers(6)).morePaths());
        assertEquals(100, plan(layers(7)).paths().size());
        assertTrue(plan(layers(7)).morePaths());
        assertFalse(plan(sideBySide(100)).morePaths());
        assertEquals(100, plan(sideBySide(101)).paths().size());
        assertTrue(plan(sideBySide(101)).morePaths());
    }

    /** Layers of two steps each, every step linked to both of the next layer: 2^layers paths. */
    private static Procedure layers(int layers) {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        List<String> links = new ArrayList<>();
        for (int layer = 1; layer <= layers; layer++) {
            for (String side : List.of("l", "r")) {
                seconds.put(side + layer, 1);
                if (layer > 1) {
                    links.add("l" + (layer - 1) + "-" + side + layer);
                    links.add("r" + (layer - 1) + "-" + side + layer);
                }
            }
        }
        return Networks.of(seconds, links);
    }

    private static Procedure sideBySide(int steps) {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        for (int number = 1; number <= steps; number++) {
            seconds.put("s" + number, 5);
        }
        return Networks.of(seconds, List.of());
    }

    @Test
    void aChainOfFourThousandStepsIsWalkedToItsEnd() {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        List<String> links = new ArrayList<>();
        for (int number = 1; number <= 4000; number++) {
            seconds.put("s" + number, 1);
            if (number > 1) {
                links.add("s" + (number - 1) + "-s" + number);
            }
        }
        CriticalPath plan = plan(Networks.of(seconds, links));
        assertEquals(4000, plan.seconds());
        assertEquals(4000, plan.paths().get(0).size());
    }

    @Test
    void timesBeyondTheGreatestIntAreToldAsThatAndDoNotTurnNegative() {
        int most = Integer.MAX_VALUE;
        Procedure procedure = timed("a:" + most + " b:" + most + " c:1", "a-b");
        CriticalPath plan = plan(procedure);
        assertEquals(most, plan.seconds());
        assertEquals(most, Durations.total(procedure));
        assertEquals(List.of(ids("a b")), plan.paths());
        assertEquals(new StepTimes(0, most, 0, most, 0, 0), plan.times().get(id("a")));
        assertFalse(plan.critical(id("c")));
    }

    @Test
    void aLoopHasNoPlan() {
        Procedure loop = timed("a:1 b:1", "a-b", "b-a");
        assertThrows(IllegalStateException.class, () -> plan(loop));
    }

    @Test
    void anUnknownStepIsRefused() {
        CriticalPath plan = plan(timed("a:1"));
        assertThrows(IllegalArgumentException.class, () -> plan.critical(id("nowhere")));
    }
}
