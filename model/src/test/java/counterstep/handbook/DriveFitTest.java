package counterstep.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DriveFitTest {
    @ParameterizedTest
    @CsvSource({
        "HEXALOBULAR, 5, HEXALOBULAR, 5, true",
        "HEXALOBULAR, 5, HEXALOBULAR, 6, false",
        "HEXALOBULAR, 5, CROSS_H, 5, false",
        "CROSS_H, 0, CROSS_H, 00, false",
        "CROSS_H, 1, CROSS_Z, 1, false",
        "HEXAGON_SOCKET, 2.5, HEXAGON_SOCKET, 2.50, true",
        "HEXAGON_SOCKET, 2.0, HEXAGON_SOCKET, 2, true",
        "HEXAGON_SOCKET, 2, HEXAGON_SOCKET, 20, false",
        "HEXALOBULAR_PIN, 8, HEXALOBULAR, 8, true",
        "HEXALOBULAR_PIN, 8, HEXALOBULAR, 10, false",
        "HEXALOBULAR, 8, HEXALOBULAR_PIN, 8, false",
        "FIVE_LOBE, '', FIVE_LOBE, 0.8, true"
    })
    void aDriverFitsItsOwnDriveAndSizeAndWhatPracticeAllows(
            DriveKind driver, String driverSize, DriveKind screw, String screwSize, boolean fits) {
        assertEquals(
                fits, DriveFit.fits(new Drive(driver, driverSize), new Drive(screw, screwSize)));
    }
}
