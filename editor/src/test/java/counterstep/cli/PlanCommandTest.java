package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterstep.testing.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlanCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Cover 90 s; then fan 61 s beside filter 20 s; then close 30 s. */
    private static final String DIAMOND =
            """
            {"format": "counterstep procedure", "version": 1, "id": "pump", "title": "Pump",
             "steps": [
              {"id": "s1", "phase": "teardown", "title": "Cover", "seconds": 90},
              {"id": "s2", "phase": "service", "title": "Fan", "seconds": 61},
              {"id": "s3", "phase": "service", "title": "Filter", "seconds": 20},
              {"id": "s4", "phase": "reassembly", "title": "Close", "seconds": 30}],
             "links": [%s]}
            """;

    private static final String LINKS =
            """
            {"before": "s1", "after": "s2"}, {"before": "s1", "after": "s3"},
            {"before": "s2", "after": "s4"}, {"before": "s3", "after": "s4"}""";

    private static final String DIAMOND_PLAN =
            """
            {"minutes": 3.35,
             "times": {"measured": 0, "estimatedByWriter": 3.35,
              "estimatedByFigures": 0, "waits": 0,
              "figures": "service worksheet in Yang and El-Haik (2003)",
              "figuresCounted": false, "steps": []},
             "criticalMinutes": 3.0167,
             "criticalPaths": [["s1", "s2", "s4"]], "morePaths": false,
             "expected": {"minutes": 3.35, "deviation": 0, "criticalMinutes": 3.0167,
              "criticalDeviation": 0, "criticalPath": ["s1", "s2", "s4"],
              "steps": []},
             "toolChanges": {"page": 0, "fewest": 0, "atLeast": 0, "proved": true,
              "order": ["s1", "s2", "s3", "s4"], "constraints": []},
             "toolChangeSeconds": 4.2,
             "crews": [
              {"technicians": 1, "secondHolds": false, "ofTheDocument": true,
               "nobodyHolds": [], "minutes": 3.35, "atLeast": 3.35, "proved": true,
               "pageMinutes": 3.35,
               "steps": [
                {"id": "s1", "technician": 1, "holds": null, "start": 0,
                 "handsEnd": 1.5, "end": 1.5},
                {"id": "s2", "technician": 1, "holds": null, "start": 1.5,
                 "handsEnd": 2.5167, "end": 2.5167},
                {"id": "s3", "technician": 1, "holds": null, "start": 2.5167,
                 "handsEnd": 2.85, "end": 2.85},
                {"id": "s4", "technician": 1, "holds": null, "start": 2.85,
                 "handsEnd": 3.35, "end": 3.35}],
               "pickUps": []}],
             "steps": [
              {"id": "s1", "minutes": 1.5, "timeSource": "estimated",
               "earliestStart": 0, "earliestFinish": 1.5, "latestStart": 0,
               "latestFinish": 1.5, "totalFloat": 0, "freeFloat": 0},
              {"id": "s2", "minutes": 1.0167, "timeSource": "estimated",
               "earliestStart": 1.5, "earliestFinish": 2.5167,
               "latestStart": 1.5, "latestFinish": 2.5167, "totalFloat": 0,
               "freeFloat": 0},
              {"id": "s3", "minutes": 0.3333, "timeSource": "estimated",
               "earliestStart": 1.5, "earliestFinish": 1.8333,
               "latestStart": 2.1833, "latestFinish": 2.5167, "totalFloat": 0.6833,
               "freeFloat": 0.6833},
              {"id": "s4", "minutes": 0.5, "timeSource": "estimated",
               "earliestStart": 2.5167, "earliestFinish": 3.0167,
               "latestStart": 2.5167, "latestFinish": 3.0167, "totalFloat": 0,
               "freeFloat": 0}]}
            """;

    @TempDir private Path folder;

    @Test
    void jsonHasDecimalMinutesAndStepsById() throws Exception {
        Run run = Run.of("plan", diamond(LINKS), "--format", "json");

        assertEquals(0, run.code(), run.err());
        assertEquals(JSON.readTree(DIAMOND_PLAN), JSON.readTree(run.out()));
    }

    @Test
    void textHasARowForEachStepAndTheTotals() throws Exception {
        Run run = Run.of("plan", diamond(LINKS));

        assertEquals(0, run.code(), run.err());
        assertRow(run, "2 Fan 1:01 1:30 - 2:31 1:30 - 2:31 0:00 0:00 critical");
        assertRow(run, "3 Filter 0:20 1:30 - 1:50 2:11 - 2:31 0:41 0:41");
        assertRow(run, "4 steps, 3:21 in page order.");
        assertRow(run, "Critical path 3:01; 1 critical path.");
        assertRow(run, "0 tool changes in page order.");
    }

    @Test
    void threePointEstimatesGiveAnExpectedTimeAndItsSpread() throws Exception {
        String ranged = "\"seconds\": 61, \"timeRange\": {\"least\": 31, \"most\": 151}";
        Path file = diamond(LINKS);
        Files.writeString(file, Files.readString(file).replace("\"seconds\": 61", ranged));

        assertEquals(
                JSON.readTree(
                        """
                        {"minutes": 3.5167, "deviation": 0.3333, "criticalMinutes": 3.1833,
                         "criticalDeviation": 0.3333, "criticalPath": ["s1", "s2", "s4"],
                         "steps": [{"id": "s2", "minutes": 1.1833, "deviation": 0.3333}]}
                        """),
                JSON.readTree(Run.of("plan", file, "--format", "json").out()).get("expected"));
        assertRow(
                Run.of("plan", file),
                "Expected by the three-point estimates of 1 step: 3:31 in page order (standard"
                        + " deviation 0:20), critical path 3:11 (standard deviation 0:20).");
    }

    @Test
    void aLoopIsNamedAndLeavesTimesNull() throws Exception {
        Path file = diamond(LINKS + ", {\"before\": \"s4\", \"after\": \"s2\"}");
        Run run = Run.of("plan", file, "--format", "json");

        assertEquals(1, run.code());
        assertTrue(run.err().contains("step 2") && run.err().contains("step 4"), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        JsonNode json = JSON.readTree(run.out());
        assertEquals(3.35, json.get("minutes").asDouble());
        assertTrue(json.get("criticalMinutes").isNull());
        assertEquals(0, json.get("criticalPaths").size());
        json.get("steps").forEach(step -> assertTrue(step.get("earliestStart").isNull()));
        assertEquals(1, Run.of("plan", file).code());
    }

    @Test
    void theCriticalPathsOfASampleLastAsLongAsStated() throws Exception {
        JsonNode json =
                JSON.readTree(
                        Run.of("plan", Samples.file(Samples.STICK_UNIT), "--format", "json").out());

        assertFalse(json.get("criticalPaths").isEmpty());
        for (JsonNode path : json.get("criticalPaths")) {
            List<String> steps = new ArrayList<>();
            path.forEach(step -> steps.add(step.asText()));
            double minutes = 0;
            for (JsonNode step : json.get("steps")) {
                if (steps.contains(step.get("id").asText())) {
                    assertEquals(0, step.get("totalFloat").asDouble());
                    minutes +=
                            step.get("earliestFinish").asDouble()
                                    - step.get("earliestStart").asDouble();
                }
            }
            assertEquals(json.get("criticalMinutes").asDouble(), minutes, 0.01);
        }
    }

    @Test
    void eachCrewHasItsLineAndTheSecondPersonIsMissedByStep() {
        Run run = Run.of("plan", Samples.file(Samples.STICK_UNIT), "--tool-change", "0");

        assertEquals(0, run.code(), run.err());
        assertRow(run, "With people, 0 s for each tool change:");
        assertRow(run, "One technician: not possible, somebody has to hold in steps 21, 34.");
        assertRow(
                run,
                "One technician and a second who holds (as in the document): 68:40, the shortest"
                        + " possible, proved; in page order 69:10.");
    }

    @Test
    void aToolChangeThatIsNoTimeIsRefused() throws Exception {
        for (String wrong : List.of("-1", "soon", "4.25", "1e9")) {
            Run run = Run.of("plan", diamond(LINKS), "--tool-change", wrong);
            assertEquals(2, run.code());
            assertTrue(run.err().contains("0 to 3600 s"), run.err());
        }
    }

    private Path diamond(String links) throws Exception {
        return Files.writeString(folder.resolve("pump.procedure.json"), DIAMOND.formatted(links));
    }

    private static void assertRow(Run run, String expected) {
        assertTrue(
                run.lines().stream()
                        .anyMatch(line -> line.strip().replaceAll(" +", " ").equals(expected)),
                () -> expected + " is not in\n" + run.out());
    }
}
