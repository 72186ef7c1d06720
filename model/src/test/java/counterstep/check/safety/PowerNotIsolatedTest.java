package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PowerNotIsolatedTest {
    @Test
    void allThatIsTouchedUnderOneSourceIsOneFault() {
        assertEquals(
                List.of(
                        "power-not-isolated [s1, s2, s3] [e1, p1, p2] Step 1 touches p1 part while e1 power is live; step 3 comes too late."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .part("p2")
                                .item(PartFacts.source("e1", "p1 p2", "", "", 0))
                                .steps("check p1", "check p2", "isolate e1", "restore power e1")));
    }

    @Test
    void aSourceAndWhatHangsOnItAreOneFault() {
        assertEquals(
                List.of(
                        "power-not-isolated [s1] [e1, p1] Step 1 touches p1 part while e1 power is live; no step before it isolates it."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .item(PartFacts.source("e2", "p1", "", "e1", 60))
                                .steps("check p1")));
    }

    @Test
    void isolatedIsNotYetProvedDead() {
        assertEquals(
                List.of(
                        "power-not-isolated [s2, s3] [e2, p1] Step 2 touches p1 part while e2 power is isolated but not proved dead; step 3 comes too late."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "", "", "", 0))
                                .item(PartFacts.source("e2", "p1", "", "e1", 60))
                                .steps(
                                        "isolate e1",
                                        "check p1",
                                        "prove dead e2 1 wait 60",
                                        "restore power e1")));
    }

    @Test
    void aSourceThatOnlyAsksForAWait() {
        assertEquals(
                List.of(
                        "power-not-isolated [s2] [e1, p1] Step 2 touches p1 part while e1 power is isolated for less than 60 s; no step before it waits and proves it."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 60, false))
                                .steps("isolate e1", "check p1", "restore power e1")));
    }

    @Test
    void whatIsRestoredButNeverIsolatedIsToldHere() {
        assertEquals(
                List.of(
                        "power-not-isolated [s1] [e1, p1] Step 1 touches p1 part while e1 power is live; no step before it isolates it."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps("check p1", "restore power e1")));
    }

    @Test
    void theIsolatingActionMayTouchWhatIsFed() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .item(PartFacts.source("e1", "c1", "c1", "", 0))
                                .steps("disconnect c1", "reconnect c1")));
    }

    @Test
    void aPoweredTestMayToo() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps("check p1 1 test")));
    }

    @Test
    void isSilentWhenProvedDead() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 60))
                                .steps(
                                        "isolate e1 1 wait 60",
                                        "prove dead e1",
                                        "check p1",
                                        "restore power e1")));
    }
}
