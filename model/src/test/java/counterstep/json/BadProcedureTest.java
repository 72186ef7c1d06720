package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.input.BadInput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fault is told in one line: where, what, what to write instead. */
class BadProcedureTest {
    private static final String SOUND =
            """
            {"format": "counterstep procedure", "version": 1, "id": "pump",
            "tools": [{"id": "t1", "name": "driver T5", "kind": "driver"}],
            "supplies": [{"id": "u2", "name": "strip"}],
            "items": [
            {"kind": "fastener set", "id": "f3", "name": "lid screws", "quantity": 4, "torqueNm": 0.09},
            {"kind": "part", "id": "p4", "name": "lid", "heldBy": ["f3"], "covers": []}],
            "photos": [{"id": "h5", "file": "lid.png"}],
            "steps": [
            {"id": "s6", "phase": "teardown", "title": "Screws", "tool": "t1", "seconds": 20, "actions": [
            {"verb": "remove", "item": "f3", "count": 4, "fingerTight": false}]},
            {"id": "s7", "phase": "reassembly", "photos": [{"photo": "h5", "callouts": [
            {"number": 1, "x": 0.5, "y": 0.5, "item": "f3"}]}]}],
            "links": [{"before": "s6", "after": "s7"}]}
            """;

    private static BadInput refusal(String json) {
        return assertThrows(
                BadInput.class, () -> ProcedureReader.read(json.getBytes(StandardCharsets.UTF_8)));
    }

    /** Groups of three lines, parted by empty ones: what is replaced, by what, the message. */
    static Stream<Arguments> faults() throws IOException {
        try (InputStream in = BadProcedureTest.class.getResourceAsStream("bad-procedures.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Arrays.stream(text.split("\n\n"))
                    .skip(1)
                    .map(String::lines)
                    .map(lines -> Arguments.of(lines.toArray()));
        }
    }

    @ParameterizedTest
    @MethodSource("faults")
    void isRefusedWithItsPlaceAndCause(String from, String to, String message) {
        String broken = SOUND.replace(from, to.equals("(nothing)") ? "" : to);
        assertNotEquals(SOUND, broken, "the fault is in the document");
        assertEquals(message, refusal(broken).getMessage());
    }

    @Test
    void theSoundDocumentIsRead() {
        assertEquals(
                2, ProcedureReader.read(SOUND.getBytes(StandardCharsets.UTF_8)).steps().size());
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertEquals(
                2,
                ProcedureReader.read(("\uFEFF" + SOUND).getBytes(StandardCharsets.UTF_8))
                        .steps()
                        .size());
    }

    @Test
    void everyPlaceWhereAFileCanBeCutOffIsRefused() {
        byte[] whole = SOUND.strip().getBytes(StandardCharsets.UTF_8);
        for (int length = 1; length < whole.length; length++) {
            String cut = new String(whole, 0, length, StandardCharsets.UTF_8);
            BadInput refusal = refusal(cut);
            boolean insideWordOrNumber = cut.matches("(?s).*: (f|fa|fal|fals|0\\.)");
            assertTrue(
                    insideWordOrNumber || refusal.what().equals("the file ends in the middle"),
                    () -> cut + " " + refusal.getMessage());
        }
    }

    @ParameterizedTest
    @MethodSource("noDocuments")
    void whatIsNoDocumentIsRefused(String text, String message) {
        assertEquals(message, refusal(text).getMessage());
    }

    static Stream<Arguments> noDocuments() {
        return Stream.of(
                Arguments.of("", "line 1: the file is empty"),
                Arguments.of(" \n \n", "line 3: the file is empty"),
                Arguments.of("[]", "line 1: a list where a procedure is expected"),
                Arguments.of("null", "line 1: null where a procedure is expected"),
                Arguments.of(
                        "<html>",
                        "line 1: not JSON at column 1; mend it, or take a copy that was saved"
                                + " whole"),
                Arguments.of(
                        SOUND + "{}",
                        "line 14: more text after the end of the document; take it out"));
    }

    @Test
    void bytesThatAreNoUtf8AreRefusedWithTheirLine() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes("{\n\"title\": \"gr".getBytes(StandardCharsets.UTF_8));
        bytes.write(0xFC);
        bytes.writeBytes("n\"}".getBytes(StandardCharsets.UTF_8));
        BadInput refusal =
                assertThrows(BadInput.class, () -> ProcedureReader.read(bytes.toByteArray()));
        assertEquals("line 2: not UTF-8 text; save it in the encoding UTF-8", refusal.getMessage());
    }
}
