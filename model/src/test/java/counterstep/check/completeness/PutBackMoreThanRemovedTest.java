package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PutBackMoreThanRemovedTest {
    @Test
    void aFifthScrewOfFourIsFound() {
        assertEquals(
                List.of("put-back-more-than-removed s2"),
                Bench.found(
                        "f1 x5",
                        "teardown: remove f1 4",
                        "reassembly: reinstall f1 5",
                        "verify: check"));
    }

    @Test
    void aConnectorClosedTwiceIsFound() {
        assertEquals(
                List.of("put-back-more-than-removed s3"),
                Bench.found(
                        "c1",
                        "teardown: disconnect c1",
                        "reassembly: reconnect c1",
                        "reassembly: reconnect c1",
                        "verify: check"));
    }

    @Test
    void asManyAsCameOutIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "f1 x5",
                        "teardown: remove f1 4",
                        "reassembly: reinstall f1 4",
                        "verify: check"));
    }
}
