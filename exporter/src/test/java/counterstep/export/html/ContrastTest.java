package counterstep.export.html;

import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.Prints;
import counterstep.export.guide.Guide;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** WCAG 2.2, 1.4.3: text at least 4.5 : 1; 1.4.11: outlines that carry meaning 3 : 1. */
final class ContrastTest {
    private static final String SHEET = Style.ofGuide(Guide.of(Prints.lamp()).imprint()).sheet();

    @ParameterizedTest
    @CsvSource({
        "ink, paper, 4.5",
        "soft, paper, 4.5",
        "ink, tag, 4.5",
        "paper, ink, 4.5",
        "soft, paper, 3"
    })
    void textAndOutlinesStandOutFromTheirGround(String front, String ground, double least) {
        double ratio = ratio(colour(front), colour(ground));
        assertTrue(ratio >= least, () -> front + " on " + ground + " is " + ratio);
    }

    private static int colour(String role) {
        Matcher colour = Pattern.compile("--" + role + ": #([0-9A-F]{6})").matcher(SHEET);
        assertTrue(colour.find(), () -> "no colour " + role);
        return Integer.parseInt(colour.group(1), 16);
    }

    private static double ratio(int one, int other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(int colour) {
        return 0.2126 * part(colour >> 16) + 0.7152 * part(colour >> 8) + 0.0722 * part(colour);
    }

    private static double part(int channel) {
        double value = (channel & 0xFF) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
