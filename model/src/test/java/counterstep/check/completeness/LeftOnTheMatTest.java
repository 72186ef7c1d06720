package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LeftOnTheMatTest {
    @Test
    void theOldOneHasToGo() {
        assertEquals(
                List.of(
                        "left-on-the-mat [s2, s1] [p1] P1 part, old, stays on the mat: new in step 2, and no step throws the old away."),
                Found.in(Sketch.of().part("p1").steps("remove p1", "fit new p1")));
    }

    @Test
    void isSilentWhenItIsThrownAway() {
        assertEquals(
                List.of(),
                Found.in(Sketch.of().part("p1").steps("remove p1", "discard p1", "fit new p1")));
    }

    @Test
    void whatNeverGoesBackIsToldAsSuch() {
        assertEquals(
                List.of(
                        "never-put-back [s1] [p1] P1 part comes off in step 1 and never goes back on."),
                Found.in(Sketch.of().part("p1").steps("remove p1")));
    }
}
