package counterstep.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.ScrewThread;
import counterstep.model.ThreadKind;
import counterstep.model.Torque;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The chart 'Standard tightening torque for metric screw threads' against T = K · F · d. */
final class StandardTorqueTest {
    private static ScrewThread metric(double diameter) {
        return new ScrewThread(ThreadKind.METRIC, diameter, OptionalDouble.empty());
    }

    /** K = 0.2, axial stress 105 N/mm², stress area (π/4)(d − 0.9382 P)² of ISO 898-1. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.2, 1.4, 1.6, 2, 2.5, 3, 3.5, 4, 5, 6})
    void theColumnForSoftSeatsIsTorqueCoefficientTimesForceTimesDiameter(double diameter) {
        double pitch = ThreadTable.coarsePitch(diameter).orElseThrow();
        double area = Math.PI / 4 * Math.pow(diameter - 0.9382 * pitch, 2);
        double newtonMetres = 0.2 * 105 * area * diameter / 1000;
        double chart = StandardTorque.soft(metric(diameter)).orElseThrow().newtonMetres();
        assertEquals(1, chart / newtonMetres, 0.026);
    }

    @ParameterizedTest
    @CsvSource({"1.6, 0.0614", "2, 0.1257", "3, 0.45"})
    void theLimitIsTheUpperEndOfTheRangeOfThatColumn(double diameter, double limit) {
        assertEquals(
                limit,
                StandardTorque.softLimit(metric(diameter)).map(Torque::newtonMetres).orElseThrow(),
                0.0001);
    }
}
