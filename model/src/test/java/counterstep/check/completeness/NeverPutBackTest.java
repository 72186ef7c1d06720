package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NeverPutBackTest {
    @Test
    void tellsHowManyScrewsStayOut() {
        assertEquals(
                List.of(
                        "never-put-back [s1, s2] [f1] 1 of the 5 f1 screws comes out in step 1 and never goes back in: step 2 puts back only 4."),
                Found.in(Sketch.of().screws("f1", 5).steps("remove f1 5", "reinstall f1 4")));
    }

    @Test
    void aPartItsHoldersAndItsLeadsAreOneFinding() {
        assertEquals(
                List.of(
                        "never-put-back [s2, s1] [p1, f1, c1] P1 part, its 2 screws and c1 plugs come off in step 2 and never go back on."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .connectors("c1", 1)
                                .part("p1", "f1", "c1", "")
                                .steps("remove f1; disconnect c1", "remove p1")));
    }

    @Test
    void aHolderThatIsPutBackTooFewIsAFaultOfItsOwn() {
        assertEquals(
                List.of(
                        "never-put-back [s1, s4] [f1] 1 of the 2 f1 screws comes out in step 1 and never goes back in: step 4 puts back only 1."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps(
                                        "remove f1",
                                        "remove p1",
                                        "reinstall p1",
                                        "reinstall f1 1")));
    }

    @Test
    void saysWhereTheOldOneIsThrownAway() {
        assertEquals(
                List.of(
                        "never-put-back [s1] [f1] The 2 f1 screws come out in step 1, are thrown away in step 2, and no new one is fitted."),
                Found.in(Sketch.of().screws("f1", 2).steps("remove f1", "discard f1")));
    }

    @Test
    void listsWhatFailsOnlyBecauseOfIt() {
        assertEquals(
                List.of(
                        "never-put-back [s2, s3] [f1] The 2 f1 screws come out in step 2 and never go back in."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "", "", "f1")
                                .steps("remove p1", "remove f1", "reinstall p1")));
    }

    @Test
    void takenOffTwiceAndPutBackOnceIsTold() {
        assertEquals(
                List.of(
                        "never-put-back [s1, s2, s3] [f1] The 2 f1 screws come out in step 1 and never go back in: steps 1 and 2 take off 4, step 3 puts back only 2."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1", "remove f1", "reinstall f1")));
    }

    @Test
    void isSilentWhenAllIsBack() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove f1", "remove p1", "reinstall p1", "reinstall f1")));
    }

    @Test
    void isSilentWhenANewOneIsIn() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1", "discard f1", "fit new f1")));
    }
}
