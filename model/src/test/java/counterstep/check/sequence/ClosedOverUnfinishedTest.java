package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ClosedOverUnfinishedTest {
    @Test
    void oneCoverOverTwoIsOneFaultAndTheLaterWorkIsSilent() {
        assertEquals(
                List.of(
                        "closed-over-unfinished [s3, s4, s5] [c1, c2, p1] P1 part goes on in step 3 over c1 plugs (still open) and c2 plugs (still open), finished only in steps 4 and 5."),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .connectors("c2", 1)
                                .part("p1", "", "", "c1 c2")
                                .steps(
                                        "remove p1",
                                        "disconnect c1; disconnect c2",
                                        "reinstall p1",
                                        "reconnect c1",
                                        "reconnect c2")));
    }

    @Test
    void theNextCoverOverTheSameFollows() {
        assertEquals(
                List.of(
                        "closed-over-unfinished [s4, s5, s6] [c1, p1] P1 part goes on in step 4 over c1 plugs (still open), finished only in step 6."),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .connectors("c2", 1)
                                .part("p1", "", "", "c1 c2")
                                .part("p2", "", "", "c1 p1")
                                .steps(
                                        "remove p2",
                                        "remove p1",
                                        "disconnect c1",
                                        "reinstall p1",
                                        "reinstall p2",
                                        "reconnect c1")));
    }

    @Test
    void whatIsNeverFinishedIsToldByItsOwnCheck() {
        assertEquals(
                List.of(
                        "left-open [s2, s3] [c1] C1 plugs is opened in step 2 and never closed again."),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .connectors("c2", 1)
                                .part("p1", "", "", "c1 c2")
                                .steps("remove p1", "disconnect c1", "reinstall p1")));
    }

    @Test
    void aCoverBackWithinTheSameStepIsInOrderOfItsActions() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .connectors("c2", 1)
                                .part("p1", "", "", "c1 c2")
                                .steps("remove p1; disconnect c1; reconnect c1; reinstall p1")));
    }

    @Test
    void isSilentWhenFinishedFirst() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .connectors("c2", 1)
                                .part("p1", "", "", "c1 c2")
                                .steps(
                                        "remove p1",
                                        "disconnect c1",
                                        "reconnect c1",
                                        "reinstall p1")));
    }
}
