package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class DisturbedBeforeNotedTest {
    @Test
    void theValueIsGoneWhenItIsNoted() {
        assertEquals(
                List.of(
                        "disturbed-before-noted [s1, s2] [g1, f1] G1 height is disturbed in step 1, before step 2 notes it."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps("loosen f1", "note g1", "restore g1; tighten f1")));
    }

    @Test
    void neverNotedAndNeverRestoredIsOneFault() {
        assertEquals(
                List.of(
                        "disturbed-before-noted [s1] [g1, f1] G1 height is disturbed in step 1 and never noted or restored."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps("loosen f1", "tighten f1")));
    }

    @Test
    void isSilentWhenNotedFirst() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps("note g1", "loosen f1", "restore g1; tighten f1")));
    }
}
