package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RestoredWithoutNoteTest {
    @Test
    void aValueNobodyNotedIsFound() {
        assertEquals(
                List.of("restored-without-note s2"),
                Bench.found(
                        "f1 x2",
                        "g1 of=f1",
                        "teardown: loosen f1",
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
                        "teardown: note g1; loosen f1",
                        "reassembly: tighten f1; restore g1",
                        "verify: check"));
    }
}
