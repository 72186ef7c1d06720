package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NeverPutBackTest {
    @Test
    void aPartAndItsScrewsAreOneFinding() {
        assertEquals(
                List.of("never-put-back s1"),
                Bench.found(
                        "f1 x4",
                        "p1 heldBy=f1",
                        "teardown: remove f1; remove p1",
                        "verify: check"));
    }

    @Test
    void oneScrewTooFewIsFound() {
        assertEquals(
                List.of("never-put-back s1"),
                Bench.found(
                        "f1 x4",
                        "p1 heldBy=f1",
                        "teardown: remove f1; remove p1",
                        "reassembly: reinstall p1; reinstall f1 3",
                        "verify: check"));
    }

    @Test
    void allBackIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "f1 x4",
                        "p1 heldBy=f1",
                        "teardown: remove f1; remove p1",
                        "reassembly: reinstall p1; reinstall f1",
                        "verify: check"));
    }
}
