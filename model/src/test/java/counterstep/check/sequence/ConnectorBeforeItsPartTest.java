package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ConnectorBeforeItsPartTest {
    @Test
    void aLeadNeedsItsPartNear() {
        assertEquals(
                List.of(
                        "connector-before-its-part [s3, s4] [c1, p1] Step 3 puts back c1 plugs before p1 part is back in step 4."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "remove f1; disconnect c1",
                                        "remove p1",
                                        "reconnect c1",
                                        "reinstall p1",
                                        "reinstall f1")));
    }

    @Test
    void besideItsPlaceIsNearEnough() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "remove f1; disconnect c1",
                                        "move aside p1",
                                        "reconnect c1",
                                        "return p1",
                                        "reinstall f1")));
    }

    @Test
    void isSilentInOrder() {
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
                                        "reconnect c1; reinstall f1")));
    }
}
