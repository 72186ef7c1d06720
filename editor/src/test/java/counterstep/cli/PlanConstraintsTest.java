package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Driver, pick, driver, pick: two changes in the best order, more where something is asked. */
final class PlanConstraintsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String FOUR =
            """
            {"format": "counterstep procedure", "version": 1, "id": "pump", "title": "Pump",
             "tools": [{"id": "t1", "name": "driver", "kind": "driver"},
                       {"id": "t2", "name": "pick", "kind": "pick"}],
             "steps": [
              {"id": "s1", "phase": "teardown", "title": "Cover", "tool": "t1"},
              {"id": "s2", "phase": "teardown", "title": "Cable", "tool": "t2"},
              {"id": "s3", "phase": "service", "title": "Fan", "tool": "t1"},
              {"id": "s4", "phase": "service", "title": "Seal", "tool": "t2"}]%s}
            """;

    @TempDir private Path folder;

    private Path pump(String more) throws Exception {
        return Files.writeString(folder.resolve("pump.procedure.json"), FOUR.formatted(more));
    }

    private JsonNode toolChanges(String more) throws Exception {
        Run run = Run.of("plan", pump(more), "--format", "json");
        assertEquals(0, run.code(), run.err());
        return JSON.readTree(run.out()).get("toolChanges");
    }

    @Test
    void phasesInOrderCostAChange() throws Exception {
        assertEquals(2, toolChanges("").get("fewest").asInt());
        JsonNode phased = toolChanges(", \"orderRules\": [\"phases in order\"]");
        assertEquals(3, phased.get("fewest").asInt());
        assertTrue(phased.get("proved").asBoolean());
        assertEquals(
                JSON.readTree(
                        """
                        [{"kind": "phases in order", "steps": [], "item": null,
                          "keptOnPage": true, "kept": true}]
                        """),
                phased.get("constraints"));
    }

    @Test
    void aGroupThatThePageTearsApartIsToldSo() throws Exception {
        String group = ", \"groups\": [{\"rule\": \"right after\", \"steps\": [\"s1\", \"s4\"]}]";
        JsonNode grouped = toolChanges(group);
        assertEquals(2, grouped.get("fewest").asInt());
        JsonNode constraint = grouped.get("constraints").get(0);
        assertEquals("right after", constraint.get("kind").asText());
        assertEquals("[\"s1\",\"s4\"]", constraint.get("steps").toString());
        assertEquals("false true", constraint.get("keptOnPage") + " " + constraint.get("kept"));
        String text = Run.of("plan", pump(group)).out();
        assertTrue(
                text.contains(
                        "Asked: steps 1, 4 right after each other; the page does not keep it."),
                text);
    }

    @Test
    void whatTheLinksForbidIsNamed() throws Exception {
        String forbidden =
                """
                , "groups": [{"rule": "right after", "steps": ["s4", "s1"]}],
                "links": [{"before": "s1", "after": "s4"}]
                """;
        JsonNode changes = toolChanges(forbidden);
        assertTrue(changes.get("fewest").isNull());
        assertTrue(changes.get("constraints").get(0).get("kept").isNull());
        String text = Run.of("plan", pump(forbidden)).out();
        assertTrue(text.contains("(the links forbid: steps 4, 1 right after each other)"), text);
    }
}
