package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Phase;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NotTriedAtTheEndTest {
    @Test
    void asksForACheckAfterTheLastStepOfReassembly() {
        assertEquals(
                List.of(
                        "not-tried-at-the-end [s2] [] Nobody checks the device after step 2, the last of reassembly."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1")
                                .phase(Phase.REASSEMBLY)
                                .steps("reinstall f1")));
    }

    @Test
    void aCheckBeforeTheLastStepIsNotEnough() {
        assertEquals(
                List.of(
                        "not-tried-at-the-end [s2] [] Nobody checks the device after step 2, the last of reassembly."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1")
                                .phase(Phase.REASSEMBLY)
                                .steps("check; reinstall f1")));
    }

    @Test
    void isSilentAfterACheck() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1")
                                .phase(Phase.REASSEMBLY)
                                .steps("reinstall f1")
                                .phase(Phase.VERIFY)
                                .steps("check")));
    }

    @Test
    void isSilentWhileNothingIsReassembled() {
        assertEquals(List.of(), Found.in(Sketch.of().connectors("c1", 1).steps("check c1")));
    }
}
