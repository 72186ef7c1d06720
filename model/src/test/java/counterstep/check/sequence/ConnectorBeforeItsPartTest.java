package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ConnectorBeforeItsPartTest {
    @Test
    void aCableToABoardThatIsAwayIsFound() {
        assertEquals(
                List.of("connector-before-its-part s2"),
                Bench.found(
                        "c1",
                        "p1 tetheredBy=c1",
                        "teardown: disconnect c1; remove p1",
                        "reassembly: reconnect c1",
                        "reassembly: reinstall p1",
                        "verify: check"));
    }

    @Test
    void theBoardFirstIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "c1",
                        "p1 tetheredBy=c1",
                        "teardown: disconnect c1; remove p1",
                        "reassembly: reinstall p1; reconnect c1",
                        "verify: check"));
    }
}
