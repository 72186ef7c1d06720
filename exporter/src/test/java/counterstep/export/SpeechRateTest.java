package counterstep.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SpeechRateTest {
    @Test
    void twentyWordsAt150TakeEightSeconds() {
        assertEquals(8000, new SpeechRate(150).milliseconds(20));
        assertEquals(8, new SpeechRate(150).seconds(20));
        assertEquals(328, new SpeechRate(183).milliseconds(1));
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, 0, 59, 301, Integer.MAX_VALUE})
    void whatNobodySpeaksIsRefused(int words) {
        assertThrows(IllegalArgumentException.class, () -> new SpeechRate(words));
    }
}
