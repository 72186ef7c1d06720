package counterstep.export.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.ConnectorKind;
import counterstep.model.DriveKind;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class DriveShapeTest {
    private static final Rectangle2D SQUARE =
            new Rectangle2D.Double(-Mark.REACH, -Mark.REACH, 2 * Mark.REACH, 2 * Mark.REACH);

    static Stream<Mark> marksOfItems() {
        return Stream.concat(
                Arrays.stream(DriveKind.values()).map(DriveShape::of),
                Arrays.stream(ConnectorKind.values()).map(ConnectorShape::of));
    }

    @ParameterizedTest
    @MethodSource("marksOfItems")
    void everyMarkStaysInItsSquare(Mark mark) {
        assertTrue(SQUARE.contains(mark.bounds()), () -> mark.bounds().toString());
    }

    @Test
    void noTwoMarksLookAlikeAtTheSizeOfTheText() {
        Set<String> pictures = new HashSet<>();
        marksOfItems().forEach(mark -> pictures.add(Arrays.toString(painted(mark))));
        assertEquals(DriveKind.values().length + ConnectorKind.values().length, pictures.size());
    }

    @Test
    void theHexalobularRecessHasSixLobesAndTheFiveLobeFive() {
        assertEquals(6, lobes(DriveShape.of(DriveKind.HEXALOBULAR), 3.8));
        assertEquals(5, lobes(DriveShape.of(DriveKind.FIVE_LOBE), 4.2));
    }

    /** How often ink begins along a circle of that radius around the middle. */
    private static int lobes(Mark mark, double radius) {
        int begins = 0;
        for (int degree = 0; degree < 360; degree++) {
            if (inked(mark, degree, radius) && !inked(mark, degree - 1, radius)) {
                begins++;
            }
        }
        return begins;
    }

    private static boolean inked(Mark mark, int degree, double radius) {
        double angle = Math.toRadians(degree);
        return mark.pieces().stream()
                .anyMatch(
                        piece ->
                                piece.inked()
                                        .contains(
                                                radius * Math.cos(angle),
                                                radius * Math.sin(angle)));
    }

    private static int[] painted(Mark mark) {
        BufferedImage canvas = new BufferedImage(18, 18, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = canvas.createGraphics();
        graphics.setColor(Color.WHITE);
        mark.paint(graphics, 9, 9, 1);
        graphics.dispose();
        return canvas.getRaster().getPixels(0, 0, 18, 18, (int[]) null);
    }
}
