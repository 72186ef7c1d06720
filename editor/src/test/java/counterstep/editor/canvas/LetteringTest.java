package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.theme.Theme;
import counterstep.editor.theme.Type;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class LetteringTest {
    @BeforeAll
    static void showATheme() {
        GuiActionRunner.execute(Theme.LIGHT::show);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.5, 0.57, 0.58, 0.6, 0.8, 1, 1.2, 1.29, 1.3, 1.5, 1.9, 3})
    void noLetterIsSmallerThanElevenPixelsOnTheScreen(double zoom) {
        Lettering letters = new Lettering(zoom);
        for (Type type : Type.values()) {
            double onScreen = letters.font(type).getSize2D() * zoom;
            assertTrue(onScreen > 10.99, type + " stands with " + onScreen);
        }
        assertTrue(FarFace.number(zoom) * zoom > 10.99);
    }

    @Test
    void lettersAreNotBlownUpFromNear() {
        for (double zoom : new double[] {1.3, 1.5, 1.9}) {
            double onScreen = new Lettering(zoom).font(Type.BODY).getSize2D() * zoom;
            assertEquals(Type.BODY.font().getSize2D(), onScreen, 0.01);
        }
    }

    @Test
    void theNumberOfAFarStepStaysInsideIt() {
        for (double zoom = Viewpoint.LEAST; zoom < 0.58; zoom += 0.01) {
            assertTrue(FarFace.number(zoom) < Measures.HEIGHT, "at " + zoom);
        }
    }

    @Test
    void aLongToolLeavesRoomForTheFloatBesideIt() {
        Graphics2D graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        for (double zoom = 0.58; zoom < 1.3; zoom += 0.01) {
            Lettering letters = new Lettering(zoom);
            graphics.setFont(letters.font(Type.LABEL));
            double width = graphics.getFontMetrics().stringWidth("float 88:88");
            double left = Measures.WIDTH - 10 - width - 14 * letters.growth();
            double room = ToolTag.room(Measures.WIDTH, letters.growth());
            assertTrue(MiddleFace.TEXT_LEFT + room + 16 <= left, "at " + zoom);
        }
        graphics.dispose();
    }
}
