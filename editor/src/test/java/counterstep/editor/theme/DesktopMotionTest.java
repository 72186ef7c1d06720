package counterstep.editor.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DesktopMotionTest {
    @ParameterizedTest
    @CsvSource({"0, true", "1, false"})
    void theSettingOfTheDesktopIsZeroForLessMotion(int value, boolean reduced) {
        assertEquals(reduced, DesktopMotion.isReduced(Integer.valueOf(value)));
    }

    @ParameterizedTest
    @CsvSource({"no", "''"})
    void whatIsNoSettingAsksForNothing(String value) {
        assertEquals(false, DesktopMotion.isReduced(value));
    }
}
