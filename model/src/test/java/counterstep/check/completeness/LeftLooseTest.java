package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LeftLooseTest {
    @Test
    void fingerTightScrewsNeedTightening() {
        assertEquals(
                List.of(
                        "left-loose [s2] [f1] The 3 f1 screws are left loose in step 2 and never tightened."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 3)
                                .steps("remove f1", "reinstall f1 finger-tight")));
    }

    @Test
    void loosenedCaptiveScrewsTooAndTheCoverOverThemFollows() {
        assertEquals(
                List.of(
                        "left-loose [s2, s4] [f1] 1 of the 3 f1 screws is left loose in step 2 and never tightened."),
                Found.in(
                        Sketch.of()
                                .item(Screws.captive("f1", 3))
                                .part("p1", "", "", "f1")
                                .steps("remove p1", "loosen f1", "tighten f1 2", "reinstall p1")));
    }

    @Test
    void isSilentWhenTightened() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 3)
                                .steps(
                                        "loosen f1",
                                        "remove f1",
                                        "reinstall f1 finger-tight",
                                        "tighten f1")));
    }
}
