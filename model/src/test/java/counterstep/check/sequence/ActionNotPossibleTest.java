package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ActionNotPossibleTest {
    @Test
    void tighteningWhatIsTightIsFound() {
        assertEquals(
                List.of("action-not-possible s1"),
                Bench.found("f1 x2", "reassembly: tighten f1", "verify: check"));
    }

    @Test
    void aCaptiveScrewIsNotRemoved() {
        assertEquals(
                List.of("action-not-possible s1"),
                Bench.found(
                        "f1 x2 captive",
                        "teardown: remove f1",
                        "reassembly: reinstall f1",
                        "verify: check"));
    }

    @Test
    void loosenedFirstIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "f1 x2", "teardown: loosen f1", "reassembly: tighten f1", "verify: check"));
    }
}
