package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RenewedItemPutBackOldTest {
    @Test
    void theOldPartThatGoesBackIsFound() {
        assertEquals(
                List.of("renewed-item-put-back-old s2"),
                Bench.found(
                        "p1 renew",
                        "teardown: remove p1",
                        "reassembly: reinstall p1",
                        "verify: check"));
    }

    @Test
    void theNewOneIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "p1 renew",
                        "teardown: remove p1; discard p1",
                        "service: fit new p1",
                        "verify: check"));
    }
}
