package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class FastenerBeforeItsPartTest {
    @Test
    void allThatWaitsForOnePartIsOneFault() {
        assertEquals(
                List.of(
                        "fastener-before-its-part [s3, s4, s5] [f1, c1, p1] Steps 3 and 4 put back f1 screws and c1 plugs before p1 part is on its place in step 5."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps(
                                        "remove f1; disconnect c1",
                                        "remove p1",
                                        "reinstall f1",
                                        "reconnect c1",
                                        "reinstall p1")));
    }

    @Test
    void asideIsNotOn() {
        assertEquals(
                List.of(
                        "fastener-before-its-part [s3, s4] [f1, p1] Step 3 puts back f1 screws before p1 part is on its place in step 4."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps("remove f1", "move aside p1", "reinstall f1", "return p1")));
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
                                .steps("remove f1", "move aside p1", "return p1", "reinstall f1")));
    }
}
