package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.Torque;
import counterstep.testing.Found;
import counterstep.testing.Mended;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class TorqueNotStatedAgainTest {
    private static Sketch with(Optional<Double> torque, String... steps) {
        FastenerSet set =
                FastenerSet.screws(new ItemId("f1"), "f1 screws", 4, Optional.empty())
                        .withTorque(torque.map(Torque::new));
        return Sketch.of().item(set).steps(steps);
    }

    private static void assertMended(Sketch sketch) {
        Mended mended = Mended.of(sketch.procedure(), "torque-not-stated-again").orElseThrow();
        assertEquals("Set to 8 cN·m", mended.name());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    @Test
    void anotherTorqueThanTheSetsIsAFault() {
        Sketch sketch = with(Optional.of(0.08), "remove f1", "reinstall f1 4 torque 0.05");
        assertEquals(
                List.of(
                        "torque-not-stated-again [s2] [f1] Step 2 tightens the 4 f1 screws with 5"
                                + " cN·m; stated is 8 cN·m for them."),
                Found.in(sketch));
        assertMended(sketch);
    }

    @Test
    void noTorqueBesideAStepThatStatesOneIsAFault() {
        Sketch sketch =
                with(Optional.empty(), "remove f1", "reinstall f1 2 torque 0.08", "reinstall f1 2");
        assertEquals(
                List.of(
                        "torque-not-stated-again [s3] [f1] Step 3 tightens the 4 f1 screws with no"
                                + " torque; stated is 8 cN·m in step 2."),
                Found.in(sketch));
        assertMended(sketch);
    }

    @Test
    void aStepWithoutTorqueHasThatOfItsSet() {
        assertEquals(List.of(), Found.in(with(Optional.of(0.08), "remove f1", "reinstall f1")));
    }

    @Test
    void seatingAsksForNone() {
        assertEquals(
                List.of(),
                Found.in(
                        with(
                                Optional.empty(),
                                "remove f1",
                                "reinstall f1 4 finger-tight",
                                "tighten f1 4 torque 0.08")));
    }

    @Test
    void noTorqueAnywhereIsNotDoubted() {
        assertEquals(List.of(), Found.in(with(Optional.empty(), "remove f1", "reinstall f1")));
    }
}
