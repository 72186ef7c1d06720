package counterstep.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.ScrewThread;
import counterstep.model.ThreadKind;
import counterstep.model.Torque;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Steel: the formula of ISO 898-7, MB = X · Rm · π/16 · d3³, with the least minor diameter of the
 * tolerances of ISO 965, as an independent check of the remembered table. Stainless: ISO 3506-1 as
 * quoted in 'Stainless steel fasteners pre-load and tightening torques'.
 */
final class BreakingTorqueTest {
    private static ScrewThread metric(double diameter) {
        return new ScrewThread(ThreadKind.METRIC, diameter, OptionalDouble.empty());
    }

    private static Optional<Double> torque(ScrewThread thread, String propertyClass) {
        return BreakingTorque.of(thread, propertyClass).map(Torque::newtonMetres);
    }

    /** Least pitch diameters of external threads, 6g from M1.6 on, by the limits of ISO 965-2. */
    @ParameterizedTest
    @CsvSource({
        "1.6, 0.35, 1.291",
        "2, 0.4, 1.654",
        "2.5, 0.45, 2.117",
        "3, 0.5, 2.580",
        "4, 0.7, 3.433",
        "5, 0.8, 4.361",
        "6, 1, 5.212"
    })
    void theTableOfSteelFollowsTheFormulaOfTheStandard(
            double diameter, double pitch, double leastPitchDiameter) {
        assertFollows(diameter, pitch, leastPitchDiameter, "8.8", 0.84 * 800);
        assertFollows(diameter, pitch, leastPitchDiameter, "9.8", 0.815 * 900);
        assertFollows(diameter, pitch, leastPitchDiameter, "10.9", 0.79 * 1040);
        assertFollows(diameter, pitch, leastPitchDiameter, "12.9", 0.75 * 1220);
    }

    private static void assertFollows(
            double diameter,
            double pitch,
            double leastPitchDiameter,
            String propertyClass,
            double shearStrength) {
        double minor = leastPitchDiameter - 17.0 / 24 * Math.sqrt(3) / 2 * pitch;
        double formula = shearStrength * Math.PI / 16 * Math.pow(minor, 3) / 1000;
        double table = torque(metric(diameter), propertyClass).orElseThrow();
        assertEquals(1, table / formula, 0.05, "M" + diameter + " " + propertyClass);
    }

    @ParameterizedTest
    @CsvSource({
        "1.6, A2-70, 0.2",
        "2, A4-80, 0.48",
        "3, A1-50, 1.1",
        "5, A2-70, 7.8",
        "10, A4-80, 74"
    })
    void stainlessScrewsBreakWhereTheirStandardSays(double diameter, String name, double torque) {
        assertEquals(Optional.of(torque), torque(metric(diameter), name));
    }

    @ParameterizedTest
    @CsvSource({"3, 8.8", "3, ' 8.8 '", "3, a2-70"})
    void aClassIsKnownAsPeopleWriteIt(double diameter, String propertyClass) {
        assertTrue(BreakingTorque.of(metric(diameter), propertyClass).isPresent());
    }

    @ParameterizedTest
    @CsvSource({"3, 3.6", "3, ''", "3, A2", "12, 8.8", "1, A2-70", "1.7, 8.8"})
    void whatNoTableHasIsNotKnown(double diameter, String propertyClass) {
        assertEquals(Optional.empty(), torque(metric(diameter), propertyClass));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4.6", "4.8", "5.6", "5.8", "6.8"})
    void aSofterClassBreaksNoLaterThanTheSoftestOfTheTable(String propertyClass) {
        assertEquals(torque(metric(3), "8.8"), torque(metric(3), propertyClass));
    }

    @Test
    void aFinePitchIsNotKnownAndTheCoarseOneMayBeStated() {
        OptionalDouble coarse = OptionalDouble.of(1);
        OptionalDouble fine = OptionalDouble.of(0.75);
        assertEquals(
                Optional.of(13.0), torque(new ScrewThread(ThreadKind.METRIC, 6, coarse), "8.8"));
        assertEquals(Optional.empty(), torque(new ScrewThread(ThreadKind.METRIC, 6, fine), "8.8"));
    }

    @Test
    void aScrewThatFormsItsThreadIsNotKnown() {
        OptionalDouble none = OptionalDouble.empty();
        assertEquals(
                Optional.empty(),
                torque(new ScrewThread(ThreadKind.PLASTIC_FORMING, 3, none), "8.8"));
    }
}
