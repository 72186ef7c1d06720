package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PowerNotRestoredTest {
    @Test
    void aCellLeftUnpluggedIsFound() {
        assertEquals(
                List.of("power-not-restored s1"),
                Bench.found("e1", "prepare: isolate e1", "verify: check"));
    }

    @Test
    void pluggedInAgainIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "e1",
                        "prepare: isolate e1",
                        "reassembly: restore power e1",
                        "verify: check"));
    }
}
