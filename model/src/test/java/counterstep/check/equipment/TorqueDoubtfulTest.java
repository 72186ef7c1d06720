package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.FastenerSet;
import counterstep.model.Seat;
import counterstep.model.Torque;
import counterstep.testing.Found;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TorqueDoubtfulTest {
    private static List<String> of(
            double diameter, String propertyClass, Seat seat, double torque) {
        FastenerSet set = Screws.metric("f1", 2, diameter, propertyClass, seat);
        return Found.in(
                Sketch.of()
                        .item(set.withTorque(Optional.of(new Torque(torque))))
                        .steps("remove f1", "reinstall f1"));
    }

    @Test
    void moreThanDieCastTakesIsDoubted() {
        assertEquals(
                List.of(
                        "torque-doubtful [s2] [f1] 20 cN·m for f1 screws in step 2: M2 into die-cast"
                                + " takes at most 12 cN·m."),
                of(2, "8.8", Seat.DIE_CAST, 0.2));
    }

    @Test
    void closeToTheBreakingTorqueIsDoubtedInMetalToo() {
        assertEquals(
                List.of(
                        "torque-doubtful [s2] [f1] 15 cN·m for f1 screws in step 2: the screw may"
                                + " break from 16 cN·m on, so take at most 14 cN·m."),
                of(1.6, "8.8", Seat.METAL, 0.15));
    }

    @ParameterizedTest
    @CsvSource({"PLASTIC, 1", "DIE_CAST, 1", "INSERT, 1", "METAL, 0", "UNKNOWN, 0", "WOOD, 0"})
    void onlySoftSeatsTakeLess(Seat seat, int findings) {
        assertEquals(findings, of(3, "8.8", seat, 0.8).size());
    }

    @Test
    void upToTheUpperEndOfTheRangeIsWhatBenchesUse() {
        assertEquals(List.of(), of(1.6, "A2-70", Seat.INSERT, 0.06));
    }

    @Test
    void whatMayBreakTheScrewIsToldAsThatAlone() {
        assertEquals(1, of(1.6, "8.8", Seat.PLASTIC, 0.8).size());
    }
}
