package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RestoredWithoutNoteTest {
    @Test
    void nobodyKnowsTheValue() {
        assertEquals(
                List.of(
                        "restored-without-note [s2, s1] [g1] G1 height is restored in step 2, but no step notes it before."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps("loosen f1", "restore g1; tighten f1")));
    }

    @Test
    void isSilentWhenNoted() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps("note g1; loosen f1", "restore g1; tighten f1")));
    }
}
