package counterstep.editor.canvas;

import java.awt.FontMetrics;
import java.util.LinkedHashMap;
import java.util.Map;

/** Shortens text to a width, with an ellipsis; remembers what it measured. */
final class TextFit {
    private static final int REMEMBERED = 2000;

    private record Asked(String text, int font, int width) {}

    private final Map<Asked, String> known =
            new LinkedHashMap<>() {
                @Override
                protected boolean removeEldestEntry(Map.Entry<Asked, String> eldest) {
                    return size() > REMEMBERED;
                }
            };

    String within(String text, FontMetrics metrics, double width) {
        Asked asked = new Asked(text, metrics.getFont().hashCode(), (int) width);
        return known.computeIfAbsent(asked, key -> shortened(text, metrics, width));
    }

    private static String shortened(String text, FontMetrics metrics, double width) {
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && metrics.stringWidth(text.substring(0, end) + "…") > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + "…";
    }
}
