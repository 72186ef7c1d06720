package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NotTriedAtTheEndTest {
    @Test
    void nobodyTriesTheDevice() {
        assertEquals(
                List.of("not-tried-at-the-end s2"),
                Bench.found("c1", "teardown: disconnect c1", "reassembly: reconnect c1"));
    }

    @Test
    void aCheckAtTheEndIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "c1",
                        "teardown: disconnect c1",
                        "reassembly: reconnect c1",
                        "verify: check"));
    }
}
