package counterstep.editor.theme;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast by the formula of WCAG 2.2 (relative luminance; 1.4.3 text 4.5, 1.4.11 marks 3). */
class ThemeContrastTest {
    private static final List<Palette> GROUNDS =
            List.of(Palette.CANVAS, Palette.PANEL, Palette.SIDE, Palette.CARD);

    /** Each text role with the grounds it is written on. */
    private static final Map<Palette, List<Palette>> TEXT =
            Map.of(
                    Palette.INK, plus(Palette.ACCENT_GROUND, Palette.ERROR_GROUND, Palette.TAG),
                    Palette.SOFT, plus(Palette.ACCENT_GROUND, Palette.ERROR_GROUND),
                    Palette.FAINT, plus(Palette.ACCENT_GROUND, Palette.ERROR_GROUND),
                    Palette.ACCENT, plus(Palette.ACCENT_GROUND),
                    Palette.ERROR, plus(Palette.ERROR_GROUND),
                    Palette.ON_ACCENT, List.of(Palette.ACCENT),
                    Palette.ON_MARK, List.of(Palette.ERROR, Palette.DOUBT, Palette.HINT),
                    Palette.PANEL, List.of(Palette.INK));

    /** Each mark or outline that carries meaning with the grounds it is drawn on. */
    private static final Map<Palette, List<Palette>> MARKS =
            Map.of(
                    Palette.ERROR, plus(Palette.ACCENT_GROUND, Palette.ERROR_GROUND),
                    Palette.DOUBT, plus(Palette.ACCENT_GROUND),
                    Palette.HINT, plus(Palette.ACCENT_GROUND),
                    Palette.CRITICAL, GROUNDS,
                    Palette.SOFT, GROUNDS,
                    Palette.FAINT, GROUNDS,
                    Palette.ACCENT, GROUNDS,
                    Palette.RUNG, List.of(Palette.CANVAS),
                    Palette.FIELD_OUTLINE, List.of(Palette.PANEL, Palette.SIDE));

    private static List<Palette> plus(Palette... more) {
        return Stream.concat(GROUNDS.stream(), Stream.of(more)).toList();
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyTextCanBeReadOnEveryGroundItIsWrittenOn(Theme theme) throws Exception {
        SwingUtilities.invokeAndWait(theme::show);
        TEXT.forEach((text, grounds) -> grounds.forEach(on -> assertContrast(text, on, 4.5)));
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyMarkCanBeSeenOnEveryGroundItIsDrawnOn(Theme theme) throws Exception {
        SwingUtilities.invokeAndWait(theme::show);
        MARKS.forEach((mark, grounds) -> grounds.forEach(on -> assertContrast(mark, on, 3)));
    }

    private static void assertContrast(Palette over, Palette ground, double least) {
        double ratio = ratio(luminance(over.color()), luminance(ground.color()));
        assertTrue(
                ratio >= least,
                () -> "%s on %s: %.2f, wanted %.1f".formatted(over, ground, ratio, least));
    }

    private static double ratio(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed())
                + 0.7152 * linear(color.getGreen())
                + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
