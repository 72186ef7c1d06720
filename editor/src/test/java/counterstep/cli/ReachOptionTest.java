package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterstep.testing.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ReachOptionTest {
    private static final Path STICK_UNIT = Samples.file(Samples.STICK_UNIT);

    @TempDir private Path folder;

    @Test
    void jsonNamesTheStepsNeededAndThoseLeftOutWithAReason() throws Exception {
        Run run = Run.of("plan", STICK_UNIT, "--reach", "p4,cable clamp", "--format", "json");

        assertEquals(0, run.code(), run.err());
        JsonNode json = new ObjectMapper().readTree(run.out());
        JsonNode reach = json.get("reach");
        assertEquals("[\"p4\",\"p5\"]", reach.get("items").toString());
        assertEquals(58, reach.get("of").asInt());
        assertEquals(23, reach.get("steps").size());
        assertEquals(35, reach.get("leftOut").size());
        assertEquals(0, reach.get("errors").asInt());
        assertEquals(
                "{\"step\":\"s4\",\"reason\":\"stick cap, cap set screw stay as they are\"}",
                reach.get("leftOut").get(0).toString());
        assertEquals(23, json.get("steps").size(), "the plan is that of the part");
    }

    @Test
    void textSaysHowManyAndListsWhatIsLeftOutByTheNumbersOfTheWhole() {
        Run run = Run.of("plan", STICK_UNIT, "--reach", "right grip");

        assertEquals(0, run.code(), run.err());
        List<String> lines = run.lines();
        assertTrue(
                lines.contains(
                        "right grip needs 21 of 58 steps. All checks run on these: 0 errors."));
        assertTrue(
                lines.contains(
                        "  18  Cross brace off: cross brace, brace screws stay as they are."));
    }

    @Test
    void theGuideToAPartIsAFileOfItsOwn() throws Exception {
        Run run = Run.of("export", STICK_UNIT, "--to", folder, "--format", "md", "--reach", "p4");

        assertEquals(0, run.code(), run.err());
        Path guide = folder.resolve(Samples.STICK_UNIT + ".reach-right-grip.guide.md");
        String text = Files.readString(guide);
        assertTrue(text.startsWith("# Orrin C4 radio controller: to reach right grip"), text);
        String left =
                text.lines()
                        .filter(line -> line.contains("Left out here, by the numbers of the whole"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(left.contains("Left grip off") && !left.contains("Right grip off"), left);
        String rest = text.replace(left, "");
        assertTrue(rest.contains("Right grip off") && !rest.contains("Left grip off"), rest);
    }

    @Test
    void aPartThatIsNotThereIsBadInput() {
        Run run = Run.of("plan", STICK_UNIT, "--reach", "flywheel");

        assertEquals(2, run.code());
        assertEquals(
                List.of("--reach: no item 'flywheel'; write the id or the name of one."),
                run.err().lines().toList());
        assertEquals(2, Run.of("plan", STICK_UNIT, "--reach", "c7").code());
    }
}
