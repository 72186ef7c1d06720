package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class DisturbedBeforeNotedTest {
    @Test
    void aNoteAfterTheScrewIsLooseIsFound() {
        assertEquals(
                List.of("disturbed-before-noted s1"),
                Bench.found(
                        "f1 x2",
                        "g1 of=f1",
                        "teardown: loosen f1",
                        "teardown: note g1",
                        "reassembly: tighten f1; restore g1",
                        "verify: check"));
    }

    @Test
    void notedFirstIsClean() {
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
