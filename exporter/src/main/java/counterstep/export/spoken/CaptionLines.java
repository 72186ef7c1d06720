package counterstep.export.spoken;

import java.util.ArrayList;
import java.util.List;

/**
 * Sentences cut into what is read at once: two lines of about 42 letters (common practice). Short
 * sentences that follow each other share a caption; a long one is cut between words, the rest of it
 * with the next in a caption of its own.
 */
final class CaptionLines {
    private static final int WIDTH = 42;
    private static final int LINES = 2;

    private final List<List<String>> captions = new ArrayList<>();
    private List<String> open = List.of();

    private CaptionLines() {}

    /** The captions, each one or two lines. */
    static List<List<String>> of(List<String> sentences) {
        CaptionLines lines = new CaptionLines();
        sentences.forEach(lines::add);
        lines.close();
        return lines.captions;
    }

    private void add(String sentence) {
        List<String> together = wrapped((String.join(" ", open) + " " + sentence).strip());
        if (together.size() <= LINES) {
            open = together;
            return;
        }
        close();
        List<String> alone = wrapped(sentence);
        int line = 0;
        while (alone.size() - line > LINES) {
            captions.add(List.copyOf(alone.subList(line, line + LINES)));
            line += LINES;
        }
        open = List.copyOf(alone.subList(line, alone.size()));
    }

    private void close() {
        if (!open.isEmpty()) {
            captions.add(open);
        }
        open = List.of();
    }

    /** A word longer than a line stands alone on one. */
    private static List<String> wrapped(String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
