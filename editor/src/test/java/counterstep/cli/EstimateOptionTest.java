package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class EstimateOptionTest {
    /** The lid was measured; the screws state no time; nobody knows how long polishing takes. */
    private static final String LAMP =
            """
            {"format": "counterstep procedure", "version": 1, "id": "lamp", "title": "Lamp",
             "items": [
              {"id": "f1", "kind": "fastener set", "name": "screws", "quantity": 4},
              {"id": "p1", "kind": "part", "name": "lid"}],
             "steps": [
              {"id": "s1", "phase": "teardown", "title": "Screws out",
               "actions": [{"verb": "remove", "item": "f1"}]},
              {"id": "s2", "phase": "teardown", "title": "Lid off", "seconds": 30,
               "timeSource": "measured", "actions": [{"verb": "remove", "item": "p1"}]},
              {"id": "s3", "phase": "service", "title": "Polish",
               "actions": [{"verb": "clean", "item": "p1"}]}],
             "links": [{"before": "s1", "after": "s2"}, {"before": "s2", "after": "s3"}]}
            """;

    @TempDir private Path folder;
    private Path lamp;

    @BeforeEach
    void write() throws Exception {
        lamp = Files.writeString(folder.resolve("lamp.procedure.json"), LAMP);
    }

    private static JsonNode json(Run run) throws Exception {
        assertEquals(0, run.code(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void withoutTheOptionAStepWithoutATimeCountsNothingAndItsEstimateIsTold() throws Exception {
        JsonNode json = json(Run.of("plan", lamp, "--format", "json"));

        assertEquals(0.5, json.get("minutes").asDouble());
        assertTrue(json.get("steps").get(0).get("timeSource").isNull());
        JsonNode times = json.get("times");
        assertEquals(0.5, times.get("measured").asDouble());
        assertEquals(0.6333, times.get("estimatedByFigures").asDouble(), "4 × 9.4 = 37.6 s");
        assertEquals(9.4, seconds(times.get("steps").get(0).get("actions").get(0)), 1e-9);
        assertTrue(times.get("steps").get(1).get("minutes").isNull());
        assertEquals("no figure for 'clean lid'", times.get("steps").get(1).get("reason").asText());
    }

    private static double seconds(JsonNode action) {
        return action.get("workSeconds").asDouble() + action.get("handlingSeconds").asDouble();
    }

    @Test
    void withTheOptionEstimatesCountAndAreNamedAsSuch() throws Exception {
        JsonNode json = json(Run.of("plan", lamp, "--format", "json", "--estimate"));

        assertEquals(1.1333, json.get("minutes").asDouble());
        assertEquals(1.1333, json.get("criticalMinutes").asDouble());
        assertEquals("figures", json.get("steps").get(0).get("timeSource").asText());
        assertEquals("measured", json.get("steps").get(1).get("timeSource").asText());
        assertTrue(json.get("steps").get(2).get("timeSource").isNull());
        assertTrue(json.get("times").get("figuresCounted").asBoolean());
    }

    @Test
    void theTextSaysHowMuchIsEstimatedAndWhereTheFiguresAreFrom() {
        Run run = Run.of("plan", lamp, "--estimate");

        assertTrue(
                run.lines().stream()
                        .anyMatch(
                                line ->
                                        line.contains("Screws out")
                                                && line.contains("0:38")
                                                && line.endsWith("estimated by the figures")),
                run.out());
        assertLine(
                run,
                "Of that measured 0:30, estimated by the writer 0:00, estimated by the figures"
                        + " 0:38; waits 0:00.");
        assertLine(
                run,
                "2 steps without a time. Estimates for 1 of them: 0:38 without tool changes,"
                        + " counted. Figures: service worksheet in Yang and El-Haik (2003).");
        assertLine(run, "  No estimate for step 3: no figure for 'clean lid'.");
    }

    @Test
    void ownFiguresAreReadFromAFileAndARefusalNamesItsLine() throws Exception {
        Path own = Files.writeString(folder.resolve("own.csv"), "clean part;60;0\n");
        JsonNode json =
                json(Run.of("plan", lamp, "--format", "json", "--estimate", "--work-times", own));
        assertEquals(2.1333, json.get("minutes").asDouble());
        assertTrue(json.get("times").get("figures").asText().endsWith("own figures"));

        Files.writeString(own, "clean part\n");
        String refusal = Run.of("plan", lamp, "--work-times", own).refusal();
        assertTrue(refusal.contains("own.csv, line 1"), refusal);
    }

    private static void assertLine(Run run, String expected) {
        assertTrue(run.lines().contains(expected), () -> expected + " is not in\n" + run.out());
    }
}
