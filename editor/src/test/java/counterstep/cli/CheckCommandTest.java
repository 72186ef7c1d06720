package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import counterstep.testing.Sketch;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class CheckCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir private Path folder;

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
            assertTrue(finding.get("witness").isNull() || finding.get("witness").isObject());
            assertTrue(finding.get("fix").isNull() || finding.get("fix").isTextual());
            assertTrue(finding.get("waived").isBoolean());
            said.add(finding.get("severity").asText() + " " + finding.get("check").asText());
        }
        assertEquals(
                text.lines().subList(0, text.lines().size() - 1).stream()
                        .filter(line -> !line.startsWith(" "))
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

    @Test
    void aWaivedFindingIsListedWithWhoAndWhyAndDoesNotCount() {
        Path file = waivedAndMistyped();
        Run run = Run.of("check", file);

        assertEquals(0, run.code());
        assertEquals(
                "error left-open step 1: C1 plugs is opened in step 1 and never closed again."
                        + " (waived by R. Weir, 2026-01-01: by the customer)",
                run.lines().get(0));
        int mistyped =
                run.lines()
                        .indexOf(
                                "hint no-such-check: There is no check 'left-lose', which a"
                                        + " setting names.");
        assertEquals("  fix: Drop the setting", run.lines().get(mistyped + 1));
        assertTrue(run.out().endsWith(", 1 waived.\n"), run.out());
        assertTrue(run.out().contains("\n0 errors, "), run.out());
    }

    @Test
    void allFixesAreAppliedInAnotherFileAndWhatIsLeftIsNamed() throws Exception {
        Path file = waivedAndMistyped();
        byte[] before = Files.readAllBytes(file);
        Path to = folder.resolve("mended.procedure.json");
        Run run = Run.of("check", file, "--mend", to);

        assertEquals(0, run.code(), run.err());
        int mistyped =
                run.lines()
                        .indexOf(
                                "mended hint no-such-check: There is no check 'left-lose', which a"
                                        + " setting names.");
        assertEquals("  by: Drop the setting", run.lines().get(mistyped + 1));
        assertTrue(run.out().contains(" applied, written to " + to + ".\n"), run.out());
        assertFalse(run.out().contains("\nhint no-such-check"), run.out());
        assertEquals(List.of(), ProcedureFile.read(to).settings());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void jsonNamesWhatWasMendedAndWhere() throws Exception {
        Path to = folder.resolve("mended.procedure.json");
        JsonNode json =
                JSON.readTree(
                        Run.of("check", waivedAndMistyped(), "--format", "json", "--mend", to)
                                .out());

        assertEquals(to.toString(), json.at("/mended/file").asText());
        List<String> mended = new ArrayList<>();
        json.at("/mended/fixes")
                .forEach(one -> mended.add(one.get("check").asText() + one.get("fix").asText()));
        assertTrue(mended.contains("no-such-checkDrop the setting"), mended.toString());
        assertTrue(json.at("/findings/0/waived").asBoolean());
    }

    @Test
    void mendingNeverWritesOverAFile() throws Exception {
        Path file = waivedAndMistyped();
        byte[] before = Files.readAllBytes(file);
        Path taken = Files.writeString(folder.resolve("taken"), "mine");

        for (Path to : List.of(file, taken, folder)) {
            String refusal = Run.of("check", file, "--mend", to).refusal();
            assertTrue(refusal.contains("is there already"), refusal);
        }
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals("mine", Files.readString(taken));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void aMendedSampleHasNothingMoreToMend(String name) {
        Path once = folder.resolve("once.procedure.json");
        Path again = folder.resolve("again.procedure.json");
        Run.of("check", Samples.file(name), "--mend", once);
        Run run = Run.of("check", once, "--mend", again);

        assertEquals("0 fixes applied, written to " + again + ".", run.lines().get(0));
        assertEquals(ProcedureFile.read(once), ProcedureFile.read(again));
        assertFalse(run.out().contains("  fix: "), run.out());
    }

    @Test
    void everyFixOfTheHurriedSampleEndsInAProcedureWithoutFindings() {
        Path to = folder.resolve("mended.procedure.json");
        Run run = Run.of("check", Samples.file(Samples.HURRIED), "--mend", to);

        assertEquals(0, run.code(), run.out());
        assertTrue(run.out().endsWith("\n0 errors, 0 doubts, 0 hints.\n"), run.out());
    }

    @Test
    void theHurriedSampleShowsAnOrderThatGoesWrong() throws Exception {
        Path file = Samples.file(Samples.HURRIED);
        List<String> lines = Run.of("check", file).lines();
        JsonNode findings =
                JSON.readTree(Run.of("check", file, "--format", "json").out()).get("findings");

        int shown = lines.indexOf("  goes wrong in this order:");
        assertTrue(shown > 0, lines.toString());
        assertTrue(lines.get(shown + 1).matches("    1\\. steps? [0-9, to]+(: .+)?"));
        for (JsonNode finding : findings) {
            JsonNode witness = finding.get("witness");
            if (witness.isObject()) {
                assertEquals(
                        Set.of("first", "then", "about", "readings", "bound"), members(witness));
            }
        }
    }

    @Test
    void theLinksThatMakeEveryOrderCompleteStandBeforeTheCounts() {
        Path file = folder.resolve("unlinked.procedure.json");
        ProcedureFile.write(
                file,
                ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN))
                        .draft()
                        .links(List.of())
                        .procedure());
        List<String> lines = Run.of("check", file).lines();
        String last = lines.get(lines.size() - 2);
        assertTrue(
                last.matches(
                        "No order goes wrong with these links: (\\d+ → \\d+, ){13}\\d+ → \\d+\\."),
                last);
    }

    /** A plug left open that a reviewer accepts, and a setting of a check that there is none of. */
    private Path waivedAndMistyped() {
        Waiver waiver =
                new Waiver(
                        "left-open",
                        List.of(new StepId("s1")),
                        List.of(new ItemId("c1")),
                        "by the customer",
                        "R. Weir",
                        "2026-01-01",
                        Extras.NONE);
        CheckSetting setting = new CheckSetting("left-lose", Optional.empty(), "so", Extras.NONE);
        Path file = folder.resolve("plug.procedure.json");
        ProcedureFile.write(
                file,
                Sketch.of()
                        .connectors("c1", 1)
                        .step("disconnect c1")
                        .procedure()
                        .draft()
                        .waivers(List.of(waiver))
                        .settings(List.of(setting))
                        .procedure());
        return file;
    }

    private static Set<String> members(JsonNode object) {
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
