package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LeftLooseTest {
    @Test
    void fingerTightScrewsMustBeTightened() {
        assertEquals(
                List.of("left-loose s2"),
                Bench.found(
                        "f1 x4",
                        "teardown: remove f1",
                        "reassembly: reinstall f1 finger-tight",
                        "verify: check"));
    }

    @Test
    void loosenedScrewsMustBeTightened() {
        assertEquals(
                List.of("left-loose s1"),
                Bench.found("f1 x4 captive", "teardown: loosen f1", "verify: check"));
    }

    @Test
    void tightenedIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "f1 x4",
                        "teardown: remove f1",
                        "reassembly: reinstall f1 finger-tight",
                        "reassembly: tighten f1",
                        "verify: check"));
    }
}
