package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every command refuses what it cannot read with one line, and writes nothing. */
final class BadInputTest {
    private static final int A_HUNDRED_MEGABYTES = 100 << 20;
    private static final String SOUND =
            """
            {"format": "counterstep procedure", "version": 1, "id": "pump", "title": "Pump",
             "items": [
              {"kind": "part", "id": "p1", "name": "lid"},
              {"kind": "fastener set", "id": "f1", "name": "lid screws", "quantity": 4}],
             "steps": [
              {"id": "s1", "phase": "teardown", "title": "Open", "actions": [
               {"verb": "remove", "item": "f1", "count": 4},
               {"verb": "remove", "item": "p1"}]},
              {"id": "s2", "phase": "reassembly", "title": "Close", "actions": [
               {"verb": "reinstall", "item": "p1"},
               {"verb": "reinstall", "item": "f1", "count": 4}]}],
             "links": [{"before": "s1", "after": "s2"}]}
            """;

    @TempDir private Path folder;

    @Test
    void theSoundDocumentIsRead() throws Exception {
        Path file = write(SOUND);

        assertTrue(Run.of("check", file).out().contains("0 errors"), Run.of("check", file).out());
        assertEquals(0, Run.of("plan", file).code());
    }

    @ParameterizedTest
    @MethodSource("spoiled")
    void aSpoiledDocumentIsRefusedWithPlaceAndCause(String from, String to, List<String> said)
            throws Exception {
        assertTrue(SOUND.contains(from), from);
        assertRefused(write(SOUND.replaceFirst(Pattern.quote(from), to)), said);
    }

    static Stream<Arguments> spoiled() {
        return Stream.of(
                Arguments.of("\"version\": 1", "\"version\": 999", List.of("version", "999")),
                Arguments.of("\"title\": \"Pump\"", "\"title\": 12", List.of("line 1", "title")),
                Arguments.of("\"steps\": [", "\"steps\": 7, \"x\": [", List.of("steps")),
                Arguments.of("\"item\": \"p1\"", "\"item\": \"p9\"", List.of("p9", "line 8")),
                Arguments.of("\"after\": \"s2\"", "\"after\": \"s9\"", List.of("s9")),
                Arguments.of("\"id\": \"s2\"", "\"id\": \"s1\"", List.of("s1")),
                Arguments.of("\"id\": \"f1\"", "\"id\": \"p1\"", List.of("p1")),
                Arguments.of("\"count\": 4", "\"count\": 0", List.of("line 7", "count", "0")),
                Arguments.of("\"count\": 4", "\"count\": -3", List.of("line 7", "count", "-3")),
                Arguments.of(
                        "\"quantity\": 4", "\"quantity\": 0", List.of("line 4", "quantity", "0")),
                Arguments.of(
                        "\"verb\": \"remove\"", "\"verb\": \"hurl\"", List.of("line 7", "hurl")),
                Arguments.of(
                        "\"kind\": \"part\"", "\"kind\": \"poem\"", List.of("line 3", "poem")));
    }

    @Test
    void aMissingFileAFolderAndWhatIsNoJsonAreRefused() throws Exception {
        assertRefused(folder.resolve("pump.procedure.json"), List.of("pump.procedure.json"));
        assertRefused(folder, List.of(folder.getFileName().toString()));
        assertRefused(write("Dear reader,\nundo the screws."), List.of("line 1"));
        assertRefused(write(""), List.of());
        assertRefused(write("[]"), List.of());
        assertRefused(write(SOUND.substring(0, SOUND.indexOf("reinstall"))), List.of("line"));
    }

    @Test
    void aHundredMegabytesOfBracketsAreRefusedQuickly() throws Exception {
        Path file = folder.resolve("pump.procedure.json");
        byte[] brackets = new byte[1 << 20];
        Arrays.fill(brackets, (byte) '[');
        try (OutputStream out = Files.newOutputStream(file)) {
            for (int written = 0; written < A_HUNDRED_MEGABYTES; written += brackets.length) {
                out.write(brackets);
            }
        }

        assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> assertRefused(file, List.of("pump.procedure.json")));
    }

    @Test
    void wordsOfADocumentNeverSteerTheTerminal() throws Exception {
        Path file =
                write(
                        SOUND.replace("lid screws", "lid\\u001b[31m\\nscrews")
                                .replace(
                                        "{\"verb\": \"reinstall\", \"item\": \"f1\", \"count\": 4}",
                                        "{\"verb\": \"reinstall\", \"item\": \"f1\", \"count\": 3}"));
        Run run = Run.of("check", file);

        assertEquals(1, run.code());
        assertFalse(run.out().contains("\u001b"), run.out());
        assertTrue(run.out().contains("screws"), run.out());
    }

    @Test
    void debugAddsWhereTheFailureArose() throws Exception {
        Run run = Run.of("check", folder.resolve("gone.procedure.json"), "--debug");

        assertEquals(2, run.code());
        assertTrue(run.err().contains("\tat counterstep."), run.err());
    }

    private void assertRefused(Path file, List<String> said) throws Exception {
        Path out = folder.resolve("guide");
        for (Run run :
                List.of(
                        Run.of("check", file),
                        Run.of("check", file, "--format", "json"),
                        Run.of("plan", file),
                        Run.of("export", file, "--to", out))) {
            String refusal = run.refusal();
            assertTrue(refusal.contains(file.getFileName().toString()), refusal);
            for (String word : said) {
                assertTrue(refusal.contains(word), () -> word + " is not in: " + refusal);
            }
        }
        assertFalse(Files.exists(out));
    }

    private Path write(String text) throws Exception {
        return Files.writeString(folder.resolve("pump.procedure.json"), text);
    }
}
