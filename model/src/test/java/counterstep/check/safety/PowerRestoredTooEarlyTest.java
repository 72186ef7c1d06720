package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PowerRestoredTooEarlyTest {
    @Test
    void workGoesOnAfterPowerIsBack() {
        assertEquals(
                List.of(
                        "power-restored-too-early [s3, s4] [e1, p1] Power of e1 power comes back in step 3, but step 4 still works on p1 part."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps("isolate e1", "check p1", "restore power e1", "check p1")));
    }

    @Test
    void aTestInBetweenHasToBeMarked() {
        assertEquals(
                List.of(
                        "power-restored-too-early [s2, s5] [e1, p1] Power of e1 power comes back in step 2, but step 5 still works on p1 part."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps(
                                        "isolate e1",
                                        "restore power e1",
                                        "check p1 1 test",
                                        "isolate e1",
                                        "check p1",
                                        "restore power e1")));
    }

    @Test
    void aMarkedTestIsFine() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps(
                                        "isolate e1",
                                        "restore power e1 1 test",
                                        "check p1 1 test",
                                        "isolate e1 1 test",
                                        "check p1",
                                        "restore power e1")));
    }

    @Test
    void isSilentWhenPowerComesLast() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps("isolate e1", "check p1", "restore power e1")));
    }
}
