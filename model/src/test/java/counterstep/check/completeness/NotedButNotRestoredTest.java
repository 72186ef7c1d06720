package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NotedButNotRestoredTest {
    @Test
    void tellsWhatDisturbsIt() {
        assertEquals(
                List.of(
                        "noted-but-not-restored [s1, s2] [g1] G1 height is noted in step 1, disturbed in step 2 and never restored."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps("note g1", "remove f1", "reinstall f1")));
    }

    @Test
    void restoredBeforeTheLastDisturbanceIsTooEarly() {
        assertEquals(
                List.of(
                        "noted-but-not-restored [s1, s2, s3, s4] [g1] G1 height is noted in step 1, disturbed in steps 2 and 4 and not restored after that; step 3 comes too early."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps(
                                        "note g1",
                                        "loosen f1",
                                        "restore g1",
                                        "remove f1",
                                        "reinstall f1")));
    }

    @Test
    void aNoteThatServesNothingIsTold() {
        assertEquals(
                List.of(
                        "noted-but-not-restored [s1] [g1] G1 height is noted in step 1 and never restored."),
                Found.in(Sketch.of().screws("f1", 2).setting("g1", "f1").steps("note g1")));
    }

    @Test
    void isSilentWhenRestored() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .setting("g1", "f1")
                                .steps(
                                        "note g1",
                                        "remove f1",
                                        "reinstall f1 finger-tight",
                                        "restore g1; tighten f1")));
    }
}
