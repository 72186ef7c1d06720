package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class FastenerBeforeItsPartTest {
    @Test
    void screwsWithoutTheirLidAreFound() {
        assertEquals(
                List.of("fastener-before-its-part s2"),
                Bench.found(
                        "f1 x4",
                        "p1 heldBy=f1",
                        "teardown: remove f1; remove p1",
                        "reassembly: reinstall f1",
                        "reassembly: reinstall p1",
                        "verify: check"));
    }

    @Test
    void theLidFirstIsClean() {
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
