package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PartStillHeldTest {
    @Test
    void aLidWithItsScrewsInIsFound() {
        assertEquals(
                List.of("part-still-held s1"),
                Bench.found(
                        "f1 x4",
                        "p1 heldBy=f1",
                        "teardown: remove p1",
                        "teardown: remove f1",
                        "reassembly: reinstall p1; reinstall f1",
                        "verify: check"));
    }

    @Test
    void looseIsNotEnoughInARoundHole() {
        assertEquals(
                List.of("part-still-held s2"),
                Bench.found(
                        "f1 x4",
                        "p1 heldBy=f1",
                        "teardown: loosen f1",
                        "teardown: remove p1",
                        "reassembly: reinstall p1",
                        "reassembly: tighten f1",
                        "verify: check"));
    }

    @Test
    void looseIsEnoughInAKeyhole() {
        assertEquals(
                List.of(),
                Bench.found(
                        "f1 x4",
                        "p1 keyhole=f1",
                        "teardown: loosen f1",
                        "teardown: remove p1",
                        "reassembly: reinstall p1",
                        "reassembly: tighten f1",
                        "verify: check"));
    }
}
