package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LeftAsideTest {
    @Test
    void whatWaitsForThePartFollows() {
        assertEquals(
                List.of(
                        "left-aside [s2, s3] [p1] P1 part is left aside in step 2 and never returned."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove f1", "move aside p1", "reinstall f1")));
    }

    @Test
    void itsHoldersStayOffWithIt() {
        assertEquals(
                List.of(
                        "left-aside [s2, s1] [p1, f1] P1 part is left aside in step 2 and never returned; its 2 screws stay off with it."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove f1", "move aside p1")));
    }

    @Test
    void aHolderThatIsPutBackTooFewIsAFaultOfItsOwn() {
        assertEquals(
                List.of(
                        "never-put-back [s1, s3] [f1] 1 of the 2 f1 screws comes out in step 1 and never goes back in: step 3 puts back only 1.",
                        "left-aside [s2, s3] [p1] P1 part is left aside in step 2 and never returned."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove f1", "move aside p1", "reinstall f1 1")));
    }

    @Test
    void isSilentWhenReturned() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove f1", "move aside p1", "return p1", "reinstall f1")));
    }
}
