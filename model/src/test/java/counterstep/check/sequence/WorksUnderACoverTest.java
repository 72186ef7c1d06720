package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class WorksUnderACoverTest {
    @Test
    void allWorkUnderOneCoverIsOneFault() {
        assertEquals(
                List.of(
                        "works-under-a-cover [s1, s2, s3] [f1, p1] Steps 1 and 2 work on f1 screws while p1 part is still on, off only in step 3."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "", "", "f1")
                                .steps("loosen f1", "tighten f1", "remove p1", "reinstall p1")));
    }

    @Test
    void aCheckReachesToo() {
        assertEquals(
                List.of(
                        "works-under-a-cover [s1] [f1, p1] Step 1 works on f1 screws while p1 part is still on."),
                Found.in(Sketch.of().screws("f1", 2).part("p1", "", "", "f1").steps("check f1")));
    }

    @Test
    void twoCoversOverOneActionAreOneFault() {
        assertEquals(
                List.of(
                        "works-under-a-cover [s1] [f1, p1, p2] Step 1 works on f1 screws while p1 part and p2 part are still on."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "", "", "f1")
                                .part("p2", "", "", "f1")
                                .steps("check f1")));
    }

    @Test
    void closedOverTooEarlyIsToldThere() {
        assertEquals(
                List.of(
                        "closed-over-unfinished [s3, s4] [f1, p1] P1 part goes on in step 3 over f1 screws (still loose), finished only in step 4."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "", "", "f1")
                                .steps("remove p1", "loosen f1", "reinstall p1", "tighten f1")));
    }

    @Test
    void isSilentWhileTheCoverIsOff() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "", "", "f1")
                                .steps("move aside p1", "loosen f1; tighten f1", "return p1")));
    }
}
