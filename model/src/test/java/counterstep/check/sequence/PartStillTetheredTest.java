package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PartStillTetheredTest {
    @Test
    void aBoardCarriedOffByItsCableIsFound() {
        assertEquals(
                List.of("part-still-tethered s1"),
                Bench.found(
                        "c1",
                        "p1 tetheredBy=c1",
                        "teardown: remove p1",
                        "teardown: disconnect c1",
                        "reassembly: reinstall p1",
                        "reassembly: reconnect c1",
                        "verify: check"));
    }

    @Test
    void asideItMayStayTethered() {
        assertEquals(
                List.of(),
                Bench.found(
                        "c1",
                        "p1 tetheredBy=c1",
                        "teardown: move aside p1",
                        "reassembly: return p1",
                        "verify: check"));
    }
}
