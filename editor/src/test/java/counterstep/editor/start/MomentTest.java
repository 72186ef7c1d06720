package counterstep.editor.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class MomentTest {
    @ParameterizedTest
    @CsvSource({
        "2026-01-20T14:02, today 14:02",
        "2026-01-19T23:59, yesterday",
        "2026-01-18T00:00, Sunday",
        "2026-01-14T08:00, Wednesday",
        "2026-01-13T08:00, 13 January",
        "2025-12-31T08:00, 31 December 2025",
        "2026-01-21T08:00, 21 January",
    })
    void theNearerItIsTheShorterItIsSaid(String then, String words) {
        ZonedDateTime at = ZonedDateTime.parse(then + "Z");
        assertEquals(words, Moment.words(at, LocalDate.of(2026, 1, 20)));
    }
}
