package counterstep.editor.order;

import java.awt.FontMetrics;

/** Words cut to the room they have. */
final class Shortened {
    private Shortened() {}

    static String to(String text, FontMetrics metrics, int width) {
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && metrics.stringWidth(text.substring(0, end) + "…") > width) {
            end--;
        }
        return text.substring(0, end).replaceAll("[ ,]+$", "") + "…";
    }
}
