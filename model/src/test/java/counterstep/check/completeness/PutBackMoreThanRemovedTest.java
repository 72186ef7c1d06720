package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PutBackMoreThanRemovedTest {
    @Test
    void tellsHowManyAreTooMany() {
        assertEquals(
                List.of(
                        "put-back-more-than-removed [s2, s1] [f1] F1 screws: step 2 puts back 1 more than step 1 takes off."),
                Found.in(Sketch.of().screws("f1", 5).steps("remove f1 4", "reinstall f1 5")));
    }

    @Test
    void aPartThatNothingTakesOffBringsItsHolders() {
        assertEquals(
                List.of(
                        "put-back-more-than-removed [s1, s2] [p1, f1] P1 part and its 2 screws go back in step 1, but no step takes them off before."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("reinstall p1", "reinstall f1")));
    }

    @Test
    void aForgottenRemovalIsToldOnceWithWhatFollows() {
        assertEquals(
                List.of(
                        "put-back-more-than-removed [s3, s1] [f1] The 2 f1 screws go back in step 3, but no step takes them off before."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove p1", "reinstall p1", "reinstall f1")));
    }

    @Test
    void aPlugClosedThatNobodyOpenedIsToldWithWhatItFeeds() {
        assertEquals(
                List.of(
                        "put-back-more-than-removed [s2, s1] [c1] C1 plugs is closed in step 2, but no step opens it before."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .connectors("c1", 1)
                                .item(PartFacts.source("e1", "p1", "c1", "", 0))
                                .steps("check p1", "reconnect c1")));
    }

    @Test
    void captiveScrewsTightenedThatNobodyLoosened() {
        assertEquals(
                List.of(
                        "put-back-more-than-removed [s1] [f1] The 2 f1 screws go back in step 1, but no step takes them off before."),
                Found.in(Sketch.of().item(Screws.captive("f1", 2)).steps("tighten f1")));
    }

    @Test
    void aWrongOrderAloneIsNotTooMany() {
        assertEquals(
                List.of(
                        "action-not-possible [s1] [f1] Step 1 cannot reinstall the 2 f1 screws: none is out."),
                Found.in(Sketch.of().screws("f1", 2).steps("reinstall f1", "remove f1")));
    }

    @Test
    void isSilentWhenAsManyGoBack() {
        assertEquals(
                List.of(),
                Found.in(Sketch.of().screws("f1", 5).steps("remove f1 4", "reinstall f1 4")));
    }
}
