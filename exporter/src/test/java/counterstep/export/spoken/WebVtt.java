package counterstep.export.spoken;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A second reader of caption files: takes what the syntax of W3C WebVTT (section 4) allows and
 * refuses all else, where a browser would drop it in silence. Style and region blocks and cue
 * settings, which we never write, are refused too.
 */
final class WebVtt {
    private static final String TIME = "((?:\\d{2,}:)?[0-5]\\d:[0-5]\\d\\.\\d{3})";
    private static final Pattern TIMINGS = Pattern.compile(TIME + "[ \\t]+-->[ \\t]+" + TIME);
    private static final Pattern REFERENCE = Pattern.compile("&(amp|lt|gt|nbsp|lrm|rlm);");
    private static final String ARROW = "-->";

    private final Set<String> ids = new HashSet<>();
    private final List<Cue> cues = new ArrayList<>();

    /** A caption: times in milliseconds, lines of text with references resolved. */
    record Cue(String id, long start, long end, String text) {}

    private WebVtt() {}

    /**
     * The cues of a file.
     *
     * @throws IllegalArgumentException if it is not as the standard has it
     */
    static List<Cue> cues(String file) {
        WebVtt reader = new WebVtt();
        String text = file.startsWith("\uFEFF") ? file.substring(1) : file;
        List<List<String>> blocks = blocks(Arrays.asList(text.split("\r\n|\n|\r", -1)));
        require(!blocks.isEmpty() && text.startsWith("WEBVTT"), "no header", text);
        List<String> header = blocks.get(0);
        require(header.size() == 1, "no empty line after the header", header);
        require(header.get(0).matches("WEBVTT([ \\t].*)?"), "header", header.get(0));
        require(!header.get(0).contains(ARROW), "an arrow in the header", header.get(0));
        blocks.subList(1, blocks.size()).forEach(reader::block);
        return reader.cues;
    }

    private static List<List<String>> blocks(List<String> lines) {
        List<List<String>> blocks = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (String line : lines) {
            if (!line.isEmpty()) {
                open.add(line);
            } else if (!open.isEmpty()) {
                blocks.add(open);
                open = new ArrayList<>();
            }
        }
        require(open.isEmpty(), "no end of line at the end", open);
        return blocks;
    }

    private void block(List<String> lines) {
        if (lines.get(0).matches("NOTE([ \\t].*)?")) {
            require(lines.stream().noneMatch(line -> line.contains(ARROW)), "arrow", lines);
            return;
        }
        boolean named = !lines.get(0).contains(ARROW);
        require(!named || lines.size() > 1, "a name alone", lines);
        String id = named ? lines.get(0) : "";
        require(!named || ids.add(id), "a name twice", id);
        List<String> rest = lines.subList(named ? 1 : 0, lines.size());
        Matcher timings = TIMINGS.matcher(rest.get(0));
        require(timings.matches(), "timings", rest.get(0));
        long start = milliseconds(timings.group(1));
        long end = milliseconds(timings.group(2));
        require(end > start, "ends before it starts", rest.get(0));
        long latest = cues.isEmpty() ? 0 : cues.get(cues.size() - 1).start();
        require(start >= latest, "starts before an earlier one", rest.get(0));
        String text = String.join("\n", rest.subList(1, rest.size()));
        cues.add(new Cue(id, start, end, plain(text)));
    }

    private static String plain(String text) {
        require(!text.contains(ARROW), "an arrow in the text", text);
        require(text.indexOf('<') < 0, "a tag, which we never write", text);
        String known = REFERENCE.matcher(text).replaceAll("");
        require(known.indexOf('&') < 0, "a bare ampersand", text);
        return text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    }

    private static long milliseconds(String time) {
        long all = 0;
        String[] parts = time.split("[:.]");
        for (String part : Arrays.copyOf(parts, parts.length - 1)) {
            all = all * 60 + Long.parseLong(part);
        }
        return all * 1000 + Long.parseLong(parts[parts.length - 1]);
    }

    private static void require(boolean holds, String what, Object where) {
        if (!holds) {
            throw new IllegalArgumentException(what + ": " + where);
        }
    }
}
