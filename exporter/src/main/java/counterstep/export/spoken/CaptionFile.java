package counterstep.export.spoken;

import counterstep.export.guide.Imprint;
import java.util.List;
import java.util.stream.Stream;

/** Writes the captions of a narration as a WebVTT file. */
final class CaptionFile {
    private static final long SECOND = 1000;
    private static final long MINUTE = 60 * SECOND;
    private static final long HOUR = 60 * MINUTE;

    private final Narration narration;
    private final Speech speech;
    private final StringBuilder out = new StringBuilder("WEBVTT\n");
    private long said;

    private CaptionFile(Narration narration) {
        this.narration = narration;
        this.speech = new Speech(narration.guide().title().language());
    }

    static String of(Narration narration) {
        return new CaptionFile(narration).write();
    }

    private String write() {
        Imprint imprint = narration.guide().imprint();
        block(
                Stream.of(
                        "NOTE",
                        speech.oneLine(imprint.name()),
                        narration.rate().wordsPerMinute() + " words per minute, without pauses",
                        "fingerprint " + imprint.fingerprint()));
        narration.parts().forEach(this::part);
        return out.toString();
    }

    private void part(Spoken spoken) {
        int cue = 0;
        for (List<String> lines : captions(spoken)) {
            int words = speech.words(String.join(" ", lines));
            if (words > 0) {
                cue++;
                String start = time(narration.rate().milliseconds(said));
                said += words;
                String end = time(narration.rate().milliseconds(said));
                Stream<String> head = Stream.of(spoken.number() + "." + cue, start + " --> " + end);
                block(Stream.concat(head, lines.stream()), 2);
            }
        }
    }

    /** No caption runs from one passage into the next. */
    private static List<List<String>> captions(Spoken spoken) {
        return spoken.passages().stream()
                .map(Passage::sentences)
                .map(CaptionLines::of)
                .flatMap(List::stream)
                .toList();
    }

    /** A block of lines after an empty one; the first so many are ours. */
    private void block(Stream<String> lines, int ours) {
        out.append('\n');
        List<String> all = lines.filter(line -> !line.isBlank()).toList();
        for (int place = 0; place < all.size(); place++) {
            String line = all.get(place);
            out.append(place < ours ? line : escaped(line)).append('\n');
        }
    }

    private void block(Stream<String> lines) {
        block(lines, 1);
    }

    /** Neither a tag nor an arrow is left. */
    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String time(long milliseconds) {
        return "%02d:%02d:%02d.%03d"
                .formatted(
                        milliseconds / HOUR,
                        milliseconds / MINUTE % 60,
                        milliseconds / SECOND % 60,
                        milliseconds % SECOND);
    }
}
