package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PowerRestoredTooEarlyTest {
    @Test
    void powerBeforeTheLastConnectorIsFound() {
        assertEquals(
                List.of("power-restored-too-early s3"),
                Bench.found(
                        "c1",
                        "e1 feeds=c1",
                        "prepare: isolate e1",
                        "teardown: disconnect c1",
                        "reassembly: restore power e1",
                        "reassembly: reconnect c1",
                        "verify: check"));
    }

    @Test
    void lastIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "c1",
                        "e1 feeds=c1",
                        "prepare: isolate e1",
                        "teardown: disconnect c1",
                        "reassembly: reconnect c1",
                        "reassembly: restore power e1",
                        "verify: check"));
    }
}
