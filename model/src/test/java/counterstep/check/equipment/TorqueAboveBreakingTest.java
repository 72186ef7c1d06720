package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.FastenerSet;
import counterstep.model.Seat;
import counterstep.model.Torque;
import counterstep.testing.Found;
import counterstep.testing.Mended;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class TorqueAboveBreakingTest {
    private static final FastenerSet SET = Screws.metric("f1", 2, 1.6, "8.8", Seat.METAL);

    private static Sketch with(Optional<Torque> torque, String reinstall) {
        return Sketch.of().item(SET.withTorque(torque)).steps("remove f1", reinstall);
    }

    private static Sketch with(double torque) {
        return with(Optional.of(new Torque(torque)), "reinstall f1");
    }

    @Test
    void theTorqueOfASetIsToldWhereItIsUsed() {
        assertEquals(
                List.of(
                        "torque-above-breaking [s2] [f1] 80 cN·m for f1 screws in step 2: a screw"
                                + " M1.6 8.8 may break from 16 cN·m on."),
                Found.in(with(0.8)));
    }

    @Test
    void soIsTheTorqueOfOneStepAndTheSetsOwnMendsIt() {
        Sketch sketch = with(Optional.of(new Torque(0.08)), "reinstall f1 2 torque 0.8");
        Mended mended = Mended.of(sketch.procedure(), "torque-above-breaking").orElseThrow();
        assertEquals("Set to 8 cN·m", mended.name());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    @Test
    void atTheMinimumAScrewMayBreak() {
        assertEquals(1, Found.in(with(0.16)).size());
    }

    @Test
    void aTorqueThatBenchesUseIsRight() {
        assertEquals(List.of(), Found.in(with(0.08)));
    }

    @Test
    void aSofterClassBreaksNoLaterThanTheSoftestOfTheTable() {
        FastenerSet soft = Screws.metric("f1", 2, 1.6, "4.8", Seat.METAL);
        Sketch sketch = Sketch.of().item(soft).steps("remove f1", "reinstall f1 2 torque 0.8");
        assertEquals(1, Found.in(sketch.procedure()).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "3.6", "A2"})
    void aClassThatNoTableHasIsNotDoubted(String propertyClass) {
        FastenerSet set = Screws.metric("f1", 2, 1.6, propertyClass, Seat.METAL);
        assertEquals(
                List.of(), Found.in(Sketch.of().item(set.withTorque(Optional.of(new Torque(5))))));
    }
}
