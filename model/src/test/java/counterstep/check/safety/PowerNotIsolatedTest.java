package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PowerNotIsolatedTest {
    @Test
    void aFedConnectorTouchedLiveIsFound() {
        assertEquals(
                List.of("power-not-isolated s1"),
                Bench.found(
                        "c1",
                        "e1 feeds=c1",
                        "teardown: disconnect c1",
                        "prepare: isolate e1",
                        "reassembly: reconnect c1",
                        "reassembly: restore power e1",
                        "verify: check"));
    }

    @Test
    void theIsolatingConnectorIsExempt() {
        assertEquals(
                List.of(),
                Bench.found(
                        "c1",
                        "c2",
                        "e1 feeds=c2 by=c1",
                        "prepare: disconnect c1",
                        "teardown: disconnect c2",
                        "reassembly: reconnect c2",
                        "reassembly: reconnect c1",
                        "verify: check"));
    }
}
