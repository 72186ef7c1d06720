package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.input.BadInput;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class HostileInputTest {
    private static final int LARGE = 60_000_000;

    private static String message(byte[] bytes) {
        return assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> assertThrows(BadInput.class, () -> ProcedureReader.read(bytes)).getMessage());
    }

    static Stream<Arguments> floods() {
        return Stream.of(
                Arguments.of("[", "lists or objects within each other more than 64 deep"),
                Arguments.of("{\"a\":", "lists or objects within each other more than 64 deep"),
                Arguments.of("[[],[],", "lists or objects within each other more than 64 deep"),
                Arguments.of("1", "a text, a name or a number without end"),
                Arguments.of("\"", "more text after the end of the document"),
                Arguments.of("x", "not JSON at column"),
                Arguments.of(" ", "the file is empty"));
    }

    @ParameterizedTest
    @MethodSource("floods")
    void aFloodOfTheSameIsRefusedInTime(String drop, String cause) {
        byte[] flood = drop.repeat(LARGE / drop.length() / 2).getBytes(StandardCharsets.UTF_8);
        assertTrue(message(flood).contains(cause), () -> message(flood));
    }

    @Test
    void aHundredMegabytesOfBracketsAreRefused() {
        byte[] brackets = new byte[100_000_000];
        Arrays.fill(brackets, (byte) '[');
        assertEquals("line 1: more than 64 MiB; a procedure is far shorter", message(brackets));
    }

    @Test
    void millionsOfSmallValuesAreRefused() {
        String flat = "[" + "[],".repeat(LARGE / 3) + "[]]";
        assertEquals(
                "line 1, [999999]: more than a million values; a procedure is far shorter",
                message(flat.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aTextOrANameWithoutEndIsRefused() {
        String text = "[\"" + "x".repeat(LARGE) + "\"]";
        assertEquals(
                "line 1, [0]: a text, a name or a number without end; shorten it",
                message(text.getBytes(StandardCharsets.UTF_8)));
        String name = "{\"" + "x".repeat(LARGE) + "\": 1}";
        assertEquals(
                "line 1: a text, a name or a number without end; shorten it",
                message(name.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aMessageStaysOneShortLineWhateverTheNamesAre() {
        String name = "x\\n\\u001b[31m".repeat(80);
        String nested = "{\"%1$s\": {\"%1$s\": 1, \"%1$s\": 2}}".formatted(name);
        String message = message(nested.getBytes(StandardCharsets.UTF_8));
        assertTrue(message.length() < 300, message);
        assertTrue(message.chars().noneMatch(Character::isISOControl), message);
    }
}
