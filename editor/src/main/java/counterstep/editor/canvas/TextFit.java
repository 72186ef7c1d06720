package counterstep.editor.canvas;

import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Shortens text to a width, with an ellipsis, or breaks it; remembers what it measured. */
final class TextFit {
    private static final int REMEMBERED = 2000;

    private record Asked(String text, int font, int width, int lines) {}

    private final Map<Asked, List<String>> known =
            new LinkedHashMap<>() {
                @Override
                protected boolean removeEldestEntry(Map.Entry<Asked, List<String>> eldest) {
                    return size() > REMEMBERED;
                }
            };

    /** The text, or as much of it as has room. */
    String within(String text, FontMetrics metrics, double width) {
        Asked asked = new Asked(text, metrics.getFont().hashCode(), (int) width, 1);
        return known.computeIfAbsent(asked, key -> List.of(shortened(text, metrics, width))).get(0);
    }

    /** The text broken between words, in at most so many lines; the last one is shortened. */
    List<String> lines(String text, FontMetrics metrics, double width, int most) {
        Asked asked = new Asked(text, metrics.getFont().hashCode(), (int) width, most);
        return most == 1
                ? List.of(within(text, metrics, width))
                : known.computeIfAbsent(asked, key -> broken(text, metrics, width, most));
    }

    private static List<String> broken(String text, FontMetrics metrics, double width, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip().replaceAll("\\s+", " ");
        while (!rest.isEmpty() && lines.size() < most) {
            boolean last = lines.size() == most - 1;
            String line = last ? shortened(rest, metrics, width) : begin(rest, metrics, width);
            lines.add(line);
            rest = last ? "" : rest.substring(line.length()).strip();
        }
        return List.copyOf(lines);
    }

    /** As many whole words as have room; at least one, or a piece of one. */
    private static String begin(String text, FontMetrics metrics, double width) {
        int end = text.length();
        while (metrics.stringWidth(text.substring(0, end)) > width) {
            int space = text.lastIndexOf(' ', end - 1);
            if (space <= 0) {
                String piece = shortened(text, metrics, width);
                return piece.length() > 1 ? piece.substring(0, piece.length() - 1) : text;
            }
            end = space;
        }
        return text.substring(0, end);
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
