package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LeftAsideTest {
    @Test
    void aPartBesideItsPlaceIsFound() {
        assertEquals(
                List.of("left-aside s1"),
                Bench.found("p1", "teardown: move aside p1", "verify: check"));
    }

    @Test
    void returnedIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "p1", "teardown: move aside p1", "reassembly: return p1", "verify: check"));
    }
}
