package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PartStillHeldTest {
    @Test
    void tellsWhatHoldsItAndUntilWhen() {
        assertEquals(
                List.of(
                        "part-still-held [s2, s3] [p1, f1] P1 part leaves in step 2, but the 2 f1 screws still hold it until step 3."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "disconnect c1",
                                        "remove p1",
                                        "remove f1",
                                        "reinstall p1",
                                        "reinstall f1; reconnect c1")));
    }

    @Test
    void oneScrewIsEnough() {
        assertEquals(
                List.of(
                        "part-still-held [s2] [p1, f1] P1 part leaves in step 2, but 1 of the 2 f1 screws still holds it."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "remove f1 1",
                                        "move aside p1",
                                        "return p1",
                                        "reinstall f1 1")));
    }

    @Test
    void whatTethersItInTheSameActionIsToldWithIt() {
        assertEquals(
                List.of(
                        "part-still-held [s1, s2] [p1, f1, c1] P1 part leaves in step 1, but the 2 f1 screws and c1 plugs still hold it until step 2."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "remove p1",
                                        "disconnect c1; remove f1",
                                        "reinstall p1",
                                        "reinstall f1; reconnect c1")));
    }

    @Test
    void looseIsEnoughInAKeyhole() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "~f1", "", "")
                                .steps("loosen f1", "remove p1", "reinstall p1", "tighten f1")));
    }

    @Test
    void isSilentWhenReleased() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps("remove f1", "move aside p1", "return p1", "reinstall f1")));
    }
}
