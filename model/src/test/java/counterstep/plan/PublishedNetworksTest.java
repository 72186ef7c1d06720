package counterstep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.Networks;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Networks with published answers, 1 unit = 1 minute. Free floats were computed from the published
 * times (earliest start of what follows less earliest finish).
 */
final class PublishedNetworksTest {
    private static final int MINUTE = 60;

    private static CriticalPath plan(Procedure procedure) {
        return CriticalPath.of(procedure, Precedence.of(procedure));
    }

    private static void assertLength(int minutes, String path, CriticalPath plan) {
        assertEquals(minutes * MINUTE, plan.seconds());
        assertEquals(List.of(Networks.ids(path)), plan.paths());
    }

    /** Each line: step, ES, EF, LS, LF, TF, FF in minutes. */
    private static void assertTimes(CriticalPath plan, String... lines) {
        Map<StepId, StepTimes> expected = new LinkedHashMap<>();
        for (String line : lines) {
            String[] part = line.split(" ");
            int[] seconds = new int[6];
            for (int place = 0; place < 6; place++) {
                seconds[place] = MINUTE * Integer.parseInt(part[place + 1]);
            }
            expected.put(
                    Networks.id(part[0]),
                    new StepTimes(
                            seconds[0],
                            seconds[1],
                            seconds[2],
                            seconds[3],
                            seconds[4],
                            seconds[5]));
        }
        assertEquals(expected, plan.times());
        assertEquals(List.copyOf(expected.keySet()), List.copyOf(plan.times().keySet()));
    }

    /**
     * An arrow network by the times of its events: start of an arrow not before the earliest time
     * of its tail, end not after the latest time of its head.
     */
    private static void assertEvents(String arrows, int[] earliest, int[] latest) {
        List<String> lines = new ArrayList<>();
        for (String arrow : arrows.split(" ")) {
            String[] part = arrow.split("[-:]");
            int tail = Integer.parseInt(part[0]) - 1;
            int head = Integer.parseInt(part[1]) - 1;
            int time = Integer.parseInt(part[2]);
            int start = earliest[tail];
            int end = latest[head];
            lines.add(
                    "a%s.%s %d %d %d %d %d %d"
                            .formatted(
                                    part[0],
                                    part[1],
                                    start,
                                    start + time,
                                    end - time,
                                    end,
                                    end - time - start,
                                    earliest[head] - start - time));
        }
        assertTimes(plan(Networks.onArrows(arrows)), lines.toArray(String[]::new));
    }

    /**
     * Class notes, 'Example 1: Draw the network for the events in Table 1', studylib.net 8378728.
     */
    @Test
    void aNetworkOnNodesWhereOneStepHasTotalButNoFreeFloat() {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        String[] steps = {"A 6", "B 2", "C 2", "D 3", "F 2", "E 4", "G 1"};
        for (String step : steps) {
            seconds.put(step.substring(0, 1), MINUTE * Integer.parseInt(step.substring(2)));
        }
        CriticalPath plan =
                plan(
                        Networks.of(
                                seconds, List.of("A-B", "A-C", "B-D", "C-F", "D-E", "F-E", "E-G")));
        assertLength(16, "A B D E G", plan);
        assertTimes(
                plan,
                "A 0 6 0 6 0 0",
                "B 6 8 6 8 0 0",
                "C 6 8 7 9 1 0",
                "D 8 11 8 11 0 0",
                "F 8 10 9 11 1 1",
                "E 11 15 11 15 0 0",
                "G 15 16 15 16 0 0");
    }

    /** J. E. Beasley, OR-Notes, activity on arc tutorial: event 7 comes before event 6. */
    @Test
    void aNetworkOnArrowsWhoseNumbersAreNotInOrder() {
        String arrows = "1-2:4 2-3:6 2-4:16 3-5:8 4-5:0 5-6:8 7-6:2 3-7:0 4-7:4 2-8:24 6-8:8 7-8:7";
        assertLength(36, "a1.2 a2.4 a4.5 a5.6 a6.8", plan(Networks.onArrows(arrows)));
        int[] earliest = {0, 4, 10, 20, 20, 28, 24, 36};
        int[] latest = {0, 4, 12, 20, 20, 28, 26, 36};
        assertEvents(arrows, earliest, latest);
        StepTimes dummy = plan(Networks.onArrows(arrows)).times().get(Networks.id("a3.7"));
        assertEquals(new StepTimes(600, 600, 26 * 60, 26 * 60, 16 * 60, 14 * 60), dummy);
    }

    /** J. E. Beasley, OR-Notes, 1990 examination example; 5-7 may not start before 3-9 ends. */
    @Test
    void aNetworkOnArrowsWithTwoDummies() {
        String arrows = "1-2:2 1-3:3 1-4:2 2-5:3 3-9:7 4-6:5 5-7:4 6-7:9 7-8:3 9-5:0 9-6:0";
        assertLength(22, "a1.3 a3.9 a9.6 a6.7 a7.8", plan(Networks.onArrows(arrows)));
        int[] earliest = {0, 2, 3, 2, 10, 10, 19, 22, 10};
        int[] latest = {0, 12, 3, 5, 15, 10, 19, 22, 10};
        assertEvents(arrows, earliest, latest);
    }

    /** Taylor, Introduction to Management Science, solutions to chapter 8, p. 114. */
    @Test
    void aNetworkOnArrowsOfSevenActivities() {
        CriticalPath plan = plan(Networks.onArrows("1-2:7 1-3:10 2-4:6 3-4:5 3-5:4 4-5:3 5-6:2"));
        assertLength(20, "a1.3 a3.4 a4.5 a5.6", plan);
        assertTimes(
                plan,
                "a1.2 0 7 2 9 2 0",
                "a1.3 0 10 0 10 0 0",
                "a2.4 7 13 9 15 2 2",
                "a3.4 10 15 10 15 0 0",
                "a3.5 10 14 14 18 4 4",
                "a4.5 15 18 15 18 0 0",
                "a5.6 18 20 18 20 0 0");
    }

    /** Taylor, Introduction to Management Science, solutions to chapter 8, p. 115. */
    @Test
    void aNetworkOnArrowsOfThirteenActivities() {
        CriticalPath plan =
                plan(
                        Networks.onArrows(
                                "1-2:8 1-3:10 1-4:9 2-5:6 2-6:4 3-5:5 4-5:0 4-7:7 5-7:12"
                                        + " 5-8:15 6-9:18 7-8:4 8-9:7"));
        assertLength(38, "a1.3 a3.5 a5.7 a7.8 a8.9", plan);
        assertTimes(
                plan,
                "a1.2 0 8 1 9 1 0",
                "a1.3 0 10 0 10 0 0",
                "a1.4 0 9 6 15 6 0",
                "a2.5 8 14 9 15 1 1",
                "a2.6 8 12 16 20 8 0",
                "a3.5 10 15 10 15 0 0",
                "a4.5 9 9 15 15 6 6",
                "a4.7 9 16 20 27 11 11",
                "a5.7 15 27 15 27 0 0",
                "a5.8 15 30 16 31 1 1",
                "a6.9 12 30 20 38 8 8",
                "a7.8 27 31 27 31 0 0",
                "a8.9 31 38 31 38 0 0");
    }
}
