package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NotedButNotRestoredTest {
    @Test
    void aDisturbedHeightThatNobodySetsIsFound() {
        assertEquals(
                List.of("noted-but-not-restored s1"),
                Bench.found(
                        "f1 x2",
                        "g1 of=f1",
                        "teardown: note g1",
                        "teardown: loosen f1",
                        "reassembly: tighten f1",
                        "verify: check"));
    }

    @Test
    void restoredIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "f1 x2",
                        "g1 of=f1",
                        "teardown: note g1",
                        "teardown: loosen f1",
                        "reassembly: tighten f1; restore g1",
                        "verify: check"));
    }
}
