package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterstep.testing.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

final class CheckCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void theStickUnitIsCompleteAndEndsWithZero() {
        Run run = Run.of("check", Samples.file(Samples.STICK_UNIT));

        assertEquals(0, run.code(), run.out());
        assertEquals("", run.err());
        assertTrue(
                run.lines().get(run.lines().size() - 1).startsWith("0 errors, 0 doubts, "),
                run.out());
    }

    @Test
    void theHurriedWritersErrorsAreLinesOfSeverityCheckAndStep() {
        Run run = Run.of("check", Samples.file(Samples.HURRIED));

        assertEquals(1, run.code());
        List<String> errors =
                run.lines().stream().filter(line -> line.startsWith("error ")).toList();
        assertTrue(errors.size() >= 8, run.out());
        for (String line : errors) {
            assertTrue(line.matches("error [a-z]+(-[a-z]+)* steps? \\d+(, \\d+)*: .+"), line);
        }
    }

    @Test
    void jsonSaysTheSameAsTextInTheAgreedForm() throws Exception {
        Run text = Run.of("check", Samples.file(Samples.HURRIED));
        Run run = Run.of("check", Samples.file(Samples.HURRIED), "--format", "json");

        assertEquals(1, run.code());
        JsonNode json = JSON.readTree(run.out());
        assertEquals(Set.of("findings"), members(json));
        List<String> said = new ArrayList<>();
        for (JsonNode finding : json.get("findings")) {
            assertEquals(
                    Set.of(
                            "check",
                            "severity",
                            "message",
                            "steps",
                            "items",
                            "witness",
                            "fix",
                            "waived"),
                    members(finding));
            assertTrue(finding.get("witness").isNull() && finding.get("fix").isNull());
            assertTrue(finding.get("waived").isBoolean());
            said.add(finding.get("severity").asText() + " " + finding.get("check").asText());
        }
        assertEquals(
                text.lines().subList(0, text.lines().size() - 1).stream()
                        .map(line -> line.replaceAll("^(\\S+ [^ :]+).*", "$1"))
                        .toList(),
                said);
    }

    @Test
    void anUnknownFormatIsAUsageError() {
        String refusal =
                Run.of("check", Samples.file(Samples.STICK_UNIT), "--format", "xml").refusal();

        assertTrue(refusal.contains("'xml' is none of text, json"), refusal);
        assertTrue(Run.of("check").refusal().contains("FILE"));
    }

    private static Set<String> members(JsonNode object) {
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
