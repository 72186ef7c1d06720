package counterstep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.TimeRange;
import counterstep.testing.Networks;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Three-point estimates with published answers; 1 unit = 1 minute. */
final class PublishedExpectedTimesTest {
    private static final int MINUTE = 60;

    /** Written 'A 5 6 7': a step that takes 5 at least, likely 6, at most 7. */
    private static Procedure network(String steps, String... links) {
        Map<String, Integer> likely = new LinkedHashMap<>();
        Map<String, TimeRange> ranges = new LinkedHashMap<>();
        for (String step : steps.split(", ")) {
            String[] part = step.split(" ");
            int[] minutes = Arrays.stream(part).skip(1).mapToInt(Integer::parseInt).toArray();
            likely.put(part[0], MINUTE * minutes[1]);
            ranges.put(part[0], new TimeRange(MINUTE * minutes[0], MINUTE * minutes[2]));
        }
        Procedure plain = Networks.of(likely, List.of(links));
        List<Step> ranged =
                plain.steps().stream()
                        .map(step -> ranged(step, ranges.get(step.id().value())))
                        .toList();
        return plain.draft().steps(ranged).procedure();
    }

    private static Step ranged(Step step, TimeRange range) {
        return step.draft().timeRange(Optional.of(range)).step();
    }

    private static ExpectedPath path(Procedure procedure) {
        return ExpectedPath.of(procedure, Precedence.of(procedure));
    }

    private static double mean(Step step) {
        return ExpectedTime.of(step).seconds() / MINUTE;
    }

    private static double variance(Step step) {
        return ExpectedTime.of(step).variance() / MINUTE / MINUTE;
    }

    private static void assertMeans(Procedure procedure, double... expected) {
        double[] means = procedure.steps().stream().mapToDouble(step -> mean(step)).toArray();
        assertEquals(expected.length, means.length);
        for (int place = 0; place < means.length; place++) {
            assertEquals(expected[place], means[place], 0.0051, "step " + place);
        }
    }

    private static void assertVariances(Procedure procedure, double... expected) {
        double[] found = procedure.steps().stream().mapToDouble(step -> variance(step)).toArray();
        assertEquals(expected.length, found.length);
        for (int place = 0; place < found.length; place++) {
            assertEquals(expected[place], found[place], 0.00051, "step " + place);
        }
    }

    private static void assertPath(
            String steps, double length, double deviation, ExpectedPath found) {
        assertEquals(Networks.ids(steps), found.steps());
        assertEquals(length, found.length().seconds() / MINUTE, 0.0051);
        assertEquals(deviation, found.length().deviation() / MINUTE, 0.00051);
    }

    /**
     * Taylor, Introduction to Management Science, chapter 8, example problem
     * (flylib.com/books/en/3.287.1.117/1): critical path 1-3-5-7 of 24. Its other steps are not on
     * it; the variance of the path, 5, was computed by hand: 4 + 4/9 + 4/9 + 1/9.
     */
    @Test
    void taylorsExampleTakesTwentyFour() {
        Procedure procedure =
                network(
                        "t1 5 8 17, t2 7 10 13, t3 3 5 7, t4 1 3 5, t5 4 6 8, t6 3 3 3, t7 3 4 5",
                        "t1-t3",
                        "t3-t5",
                        "t5-t7");
        assertMeans(procedure, 9, 10, 5, 3, 6, 3, 4);
        assertPath("t1 t3 t5 t7", 24, Math.sqrt(5), path(procedure));
    }

    /**
     * Three paths side by side, course slides with their solution (coursehero p2vl9tn): means,
     * variances, and 20.50, 21.50, 19.50 with deviations 1.118, 1.344, 0.726.
     */
    @Test
    void threePathsHaveThePublishedLengthsAndSpreads() {
        String all =
                "A 5 6 7, B 8 8 11, C 6 8 11, D 9 12 15, E 5 6 9, F 5 6 7, G 2 3 7, H 4 4 5, I 5 7"
                        + " 8";
        String[] links = {"A-C", "C-E", "D-F", "F-G", "B-H", "H-I"};
        Procedure procedure = network(all, links);
        assertMeans(procedure, 6, 8.5, 8.17, 12, 6.33, 6, 3.5, 4.17, 6.83);
        assertVariances(procedure, .111, .250, .694, 1, .444, .111, .694, .028, .250);
        assertPath("D F G", 21.5, 1.344, path(procedure));
        assertPath("A C E", 20.5, 1.118, path(network("A 5 6 7, C 6 8 11, E 5 6 9", "A-C", "C-E")));
        assertPath("B H I", 19.5, 0.726, path(network("B 8 8 11, H 4 4 5, I 5 7 8", "B-H", "H-I")));
    }

    /**
     * A network of fourteen (wizedu.com 717873): means, length 50.83 and path are published; the
     * deviation 3.346 was computed from the published variances' rule.
     */
    @Test
    void aNetworkOfFourteenHasThePublishedLengthAndPath() {
        Procedure procedure =
                network(
                        "A 5 5 7, B 1 2 5, C 5 5 5, D 4 8 13, E 1 10 17, F 1 5 7, G 2 6 9, H 4 4 6,"
                                + " I 2 7 10, J 2 4 7, K 6 10 13, L 2 6 6, M 2 2 3, N 7 7 12",
                        "A-C",
                        "A-D",
                        "B-E",
                        "C-E",
                        "D-F",
                        "D-G",
                        "E-H",
                        "F-H",
                        "G-I",
                        "H-I",
                        "I-J",
                        "I-K",
                        "J-L",
                        "K-M",
                        "L-N",
                        "M-N");
        assertMeans(
                procedure, 5.33, 2.33, 5, 8.17, 9.67, 4.67, 5.83, 4.33, 6.67, 4.17, 9.83, 5.33,
                2.17, 7.83);
        assertPath("A C E H I K M N", 50.83, 3.346, path(procedure));
    }
}
