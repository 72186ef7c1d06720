package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LoopInTheLinksTest {
    @Test
    void namesTheRing() {
        assertEquals(
                List.of(
                        "loop-in-the-links [s1, s2, s3] [] The links lead in a ring, 1 → 2 → 3 → 1: no order of the steps can keep them."),
                Found.in(
                        Sketch.of()
                                .steps("check", "check", "check")
                                .link(1, 2)
                                .link(2, 3)
                                .link(3, 1)));
    }

    @Test
    void isSilentWithoutRing() {
        assertEquals(
                List.of(),
                Found.in(Sketch.of().steps("check", "check", "check").link(1, 2).link(1, 3)));
    }
}
