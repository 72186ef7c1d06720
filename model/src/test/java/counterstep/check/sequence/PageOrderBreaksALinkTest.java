package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PageOrderBreaksALinkTest {
    @Test
    void aStepAtTheWrongPlaceIsOneFault() {
        assertEquals(
                List.of(
                        "page-order-breaks-a-link [s1, s2, s3] [] Step 1 stands on the page before steps 2 and 3, but the links put it after."),
                Found.in(Sketch.of().steps("check", "check", "check").link(3, 1).link(2, 1)));
    }

    @Test
    void twoPairsAreTwo() {
        assertEquals(
                List.of(
                        "page-order-breaks-a-link [s1, s2] [] Step 1 stands on the page before step 2, but the links put it after.",
                        "page-order-breaks-a-link [s3, s4] [] Step 3 stands on the page before step 4, but the links put it after."),
                Found.in(
                        Sketch.of()
                                .steps("check", "check", "check", "check")
                                .link(2, 1)
                                .link(4, 3)));
    }

    @Test
    void aLoopIsToldAsALoop() {
        assertEquals(
                List.of(
                        "loop-in-the-links [s1, s2] [] The links lead in a ring, 1 → 2 → 1: no order of the steps can keep them."),
                Found.in(Sketch.of().steps("check", "check").link(1, 2).link(2, 1)));
    }

    @Test
    void isSilentAlongThePage() {
        assertEquals(
                List.of(),
                Found.in(Sketch.of().steps("check", "check", "check").link(1, 3).link(2, 3)));
    }
}
