package counterstep.export.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.ThreadKind;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class ScrewSideTest {
    private static FastenerSet set(FastenerForm form, Head head, OptionalDouble length) {
        return new FastenerSet(
                new ItemId("f1"),
                "lid screws",
                4,
                form,
                Optional.empty(),
                head,
                Optional.of(new ScrewThread(ThreadKind.METRIC, 2, OptionalDouble.empty())),
                length,
                "",
                Seat.UNKNOWN,
                Optional.empty(),
                "",
                "",
                false,
                false,
                "",
                "",
                Extras.NONE);
    }

    private static ScrewSide screw(Head head, double length) {
        return ScrewSide.of(set(FastenerForm.SCREW, head, OptionalDouble.of(length))).orElseThrow();
    }

    @Test
    void theShankOfAPanHeadIsAsLongAsStatedAndAsThickAsItsThread() {
        ScrewSide screw = screw(Head.PAN, 6);
        assertEquals(6, screw.shank().getBounds2D().getWidth(), 1e-9);
        assertEquals(2, screw.shank().getBounds2D().getHeight(), 1e-9);
        assertEquals(screw.head().getBounds2D().getWidth() + 6, screw.width(), 1e-9);
    }

    @Test
    void aCountersunkScrewIsAsLongOverAllAsStated() {
        assertEquals(8, screw(Head.COUNTERSUNK, 8).width(), 1e-9);
    }

    @Test
    void aSetScrewIsShankAlone() {
        ScrewSide screw = screw(Head.NONE, 3);
        assertEquals(3, screw.width(), 1e-9);
        assertEquals(2, screw.height(), 1e-9);
    }

    @Test
    void whatIsNoScrewOrOfNoStatedLengthIsNotDrawn() {
        assertEquals(
                Optional.empty(),
                ScrewSide.of(set(FastenerForm.SCREW, Head.PAN, OptionalDouble.empty())));
        assertEquals(
                Optional.empty(),
                ScrewSide.of(set(FastenerForm.NUT, Head.NONE, OptionalDouble.of(3))));
    }
}
