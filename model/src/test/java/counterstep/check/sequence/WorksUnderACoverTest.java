package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class WorksUnderACoverTest {
    @Test
    void aConnectorUnderAClosedLidIsFound() {
        assertEquals(
                List.of("works-under-a-cover s1"),
                Bench.found(
                        "p1 covers=c1",
                        "c1",
                        "teardown: disconnect c1",
                        "teardown: remove p1",
                        "reassembly: reconnect c1",
                        "reassembly: reinstall p1",
                        "verify: check"));
    }

    @Test
    void withTheLidOffItIsClean() {
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
