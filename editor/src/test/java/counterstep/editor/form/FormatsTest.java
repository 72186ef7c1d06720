package counterstep.editor.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class FormatsTest {
    @ParameterizedTest
    @CsvSource({"1:05, 65", "0:00, 0", ":30, 30", "2, 120", "75:10, 4510"})
    void timesAreMinutesAndSeconds(String text, int seconds) {
        assertEquals(OptionalInt.of(seconds), Formats.TIME.read().apply(text));
    }

    @Test
    void aTimeReadsAsItIsWritten() {
        assertEquals("1:05", Formats.TIME.write().apply(OptionalInt.of(65)));
        assertEquals("", Formats.TIME.write().apply(OptionalInt.empty()));
        assertEquals(OptionalInt.empty(), Formats.TIME.read().apply(""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1:60", "1:2:3", "-1", "soon", "99999999999", "1:"})
    void aTimeThatIsNoneIsRefusedWithWhatToWrite(String text) {
        assertThrows(IllegalArgumentException.class, () -> Formats.TIME.read().apply(text));
    }

    @Test
    void aCountIsOneOrMore() {
        assertEquals(12, Formats.COUNT.read().apply("12"));
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Formats.COUNT.read().apply("0"));
        assertEquals("write a whole number, 1 or more", refused.getMessage());
    }

    @Test
    void aSizeTakesPointOrComma() {
        assertEquals(OptionalDouble.of(3.5), Formats.SIZE.read().apply("3,5"));
        assertEquals(OptionalDouble.of(3.5), Formats.SIZE.read().apply("3.5"));
        assertEquals("3.5", Formats.SIZE.write().apply(OptionalDouble.of(3.5)));
        assertThrows(IllegalArgumentException.class, () -> Formats.SIZE.read().apply("NaN"));
        assertThrows(IllegalArgumentException.class, () -> Formats.SIZE.read().apply("-2"));
    }
}
