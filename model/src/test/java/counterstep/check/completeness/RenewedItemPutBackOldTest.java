package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RenewedItemPutBackOldTest {
    @Test
    void theOldPartMustNotGoBack() {
        assertEquals(
                List.of(
                        "renewed-item-put-back-old [s2] [p1] P1 part: to be renewed, but step 2 puts back what was taken off."),
                Found.in(
                        Sketch.of()
                                .item(PartFacts.renewed(PartFacts.part("p1", 1, "", "", "")))
                                .steps("remove p1", "reinstall p1")));
    }

    @Test
    void norOutOfTheBin() {
        assertEquals(
                List.of(
                        "renewed-item-put-back-old [s3] [p1] P1 part: to be renewed, but step 3 puts back what was taken off."),
                Found.in(
                        Sketch.of()
                                .item(PartFacts.renewed(PartFacts.part("p1", 1, "", "", "")))
                                .steps("remove p1", "discard p1", "reinstall p1")));
    }

    @Test
    void aPartThatStaysInIsNotRenewed() {
        assertEquals(
                List.of(
                        "renewed-item-put-back-old [s1] [p1] P1 part is to be renewed, but no step fits a new one."),
                Found.in(
                        Sketch.of()
                                .item(PartFacts.renewed(PartFacts.part("p1", 1, "", "", "")))
                                .steps("check p1")));
    }

    @Test
    void oneTimeScrewsMustNotGoBack() {
        assertEquals(
                List.of(
                        "renewed-item-put-back-old [s2] [f1] The 2 f1 screws: to be renewed, but step 2 puts back what was taken off."),
                Found.in(
                        Sketch.of()
                                .item(Screws.oneTime("f1", 2))
                                .steps("remove f1", "reinstall f1")));
    }

    @Test
    void isSilentWhenNewOnesGoIn() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .item(PartFacts.renewed(PartFacts.part("p1", 1, "", "", "")))
                                .item(Screws.oneTime("f1", 2))
                                .steps(
                                        "remove f1; remove p1",
                                        "discard f1; discard p1",
                                        "fit new p1; fit new f1")));
    }

    @Test
    void oneTimeScrewsThatStayInAreFine() {
        assertEquals(
                List.of(), Found.in(Sketch.of().item(Screws.oneTime("f1", 2)).steps("check f1")));
    }
}
