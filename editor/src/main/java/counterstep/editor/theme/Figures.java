package counterstep.editor.theme;

import java.awt.FontMetrics;
import java.awt.Graphics2D;

/**
 * Draws figures so that digits stand under digits. Java 2D cannot ask a font for its tabular
 * digits, so each digit gets the width of the widest.
 */
public final class Figures {
    private Figures() {}

    /** Draws text that ends at {@code right}, in the font and colour set. */
    public static void drawRight(Graphics2D graphics, String text, double right, double baseline) {
        draw(graphics, text, right - width(graphics.getFontMetrics(), text), baseline);
    }

    /** Draws text that begins at {@code left}, in the font and colour set. */
    public static void draw(Graphics2D graphics, String text, double left, double baseline) {
        FontMetrics metrics = graphics.getFontMetrics();
        double x = left;
        for (int place = 0; place < text.length(); place++) {
            char sign = text.charAt(place);
            double advance = advance(metrics, sign);
            double inset = (advance - metrics.charWidth(sign)) / 2;
            graphics.drawString(String.valueOf(sign), (float) (x + inset), (float) baseline);
            x += advance;
        }
    }

    /** Width of text drawn here. */
    public static double width(FontMetrics metrics, String text) {
        return text.chars().mapToDouble(sign -> advance(metrics, (char) sign)).sum();
    }

    private static double advance(FontMetrics metrics, char sign) {
        return Character.isDigit(sign) ? metrics.charWidth('0') : metrics.charWidth(sign);
    }
}
