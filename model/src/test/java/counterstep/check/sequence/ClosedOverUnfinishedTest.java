package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ClosedOverUnfinishedTest {
    @Test
    void aLidOverAnOpenConnectorIsToldAtTheLid() {
        assertEquals(
                List.of("closed-over-unfinished s3"),
                Bench.found(
                        "p1 covers=c1",
                        "c1",
                        "teardown: remove p1",
                        "teardown: disconnect c1",
                        "reassembly: reinstall p1",
                        "reassembly: reconnect c1",
                        "verify: check"));
    }

    @Test
    void closedAfterItIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "p1 covers=c1",
                        "c1",
                        "teardown: remove p1",
                        "teardown: disconnect c1",
                        "reassembly: reconnect c1",
                        "reassembly: reinstall p1",
                        "verify: check"));
    }
}
