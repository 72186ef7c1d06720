package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PartStillTetheredTest {
    @Test
    void tellsTheLeadAndUntilWhen() {
        assertEquals(
                List.of(
                        "part-still-tethered [s2, s3] [p1, c1] P1 part leaves in step 2, but c1 plugs still tethers it until step 3."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "remove f1",
                                        "remove p1",
                                        "disconnect c1",
                                        "reinstall p1",
                                        "reinstall f1; reconnect c1")));
    }

    @Test
    void movingAsideWithLeadsOnIsFine() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps("remove f1", "move aside p1", "return p1", "reinstall f1")));
    }

    @Test
    void isSilentWhenOpen() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "remove f1; disconnect c1",
                                        "remove p1",
                                        "reinstall p1",
                                        "reinstall f1; reconnect c1")));
    }
}
