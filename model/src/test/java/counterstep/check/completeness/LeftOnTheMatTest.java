package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LeftOnTheMatTest {
    @Test
    void theOldPartThatNobodyThrowsAwayIsFound() {
        assertEquals(
                List.of("left-on-the-mat s2"),
                Bench.found("p1", "teardown: remove p1", "service: fit new p1", "verify: check"));
    }

    @Test
    void discardedIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "p1",
                        "teardown: remove p1; discard p1",
                        "service: fit new p1",
                        "verify: check"));
    }
}
