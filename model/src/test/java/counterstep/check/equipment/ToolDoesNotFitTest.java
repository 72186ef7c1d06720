package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ToolDoesNotFitTest {
    @Test
    void aDriverOfAnotherSizeIsFound() {
        assertEquals(
                List.of("tool-does-not-fit s1"),
                Bench.found(
                        "f1 x2 T5",
                        "t1 T6",
                        "teardown: remove f1 tool=t1",
                        "reassembly: reinstall f1",
                        "verify: check"));
    }

    @Test
    void aDriverOfAnotherKindIsFound() {
        assertEquals(
                List.of("tool-does-not-fit s1"),
                Bench.found(
                        "f1 x2 T5",
                        "t1 PH0",
                        "teardown: remove f1 tool=t1",
                        "reassembly: reinstall f1",
                        "verify: check"));
    }

    @Test
    void theRightDriverIsClean() {
        assertEquals(
                List.of(),
                Bench.found(
                        "f1 x2 T5",
                        "t1 T5",
                        "teardown: remove f1 tool=t1",
                        "reassembly: reinstall f1 tool=t1",
                        "verify: check"));
    }
}
