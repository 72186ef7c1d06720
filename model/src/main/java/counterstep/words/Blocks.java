package counterstep.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Cuts CommonMark into blocks of prose: paragraphs, list entries, headings, without their marks.
 * Blocks of code are no prose and left out. Plainer than the standard where only layout differs.
 */
final class Blocks {
    private static final Pattern FENCE = Pattern.compile(" {0,3}(`{3,}|~{3,}).*");
    private static final Pattern MARK =
            Pattern.compile("(?:#{1,6}|[-*+]|[0-9]{1,9}[.)])(?:[ \t]++|$)");
    private static final Pattern REFERENCE = Pattern.compile(" {0,3}\\[[^\\]]++\\]:\\s.*");

    private final List<Prose> blocks = new ArrayList<>();
    private Prose open = new Prose();
    private String fence = "";
    private boolean blankBefore = true;
    private boolean inList;

    private Blocks() {}

    static List<Prose> of(String commonMark) {
        Blocks reading = new Blocks();
        int start = 0;
        while (start <= commonMark.length()) {
            int end = lineEnd(commonMark, start);
            reading.line(commonMark.substring(start, end), start);
            start = end + (commonMark.startsWith("\r\n", end) ? 2 : 1);
        }
        reading.close();
        return reading.blocks;
    }

    private static int lineEnd(String text, int start) {
        int end = start;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    private void line(String line, int origin) {
        boolean blank = line.isBlank();
        boolean noProse = inFence(line) || blank || isRule(line) || isReference(line);
        if (noProse) {
            close();
        } else if (!(blankBefore && !inList && indented(line))) {
            prose(line, origin);
        }
        blankBefore = blank || blankBefore && open.isEmpty();
    }

    private static boolean indented(String line) {
        return line.startsWith("    ") || line.startsWith("\t");
    }

    private static boolean isReference(String line) {
        return line.contains("]:") && REFERENCE.matcher(line).matches();
    }

    private boolean inFence(String line) {
        if (fence.isEmpty() && !line.contains("```") && !line.contains("~~~")) {
            return false;
        }
        Matcher matcher = FENCE.matcher(line);
        boolean fenced = matcher.matches();
        if (fence.isEmpty()) {
            fence = fenced ? matcher.group(1) : "";
            return fenced;
        }
        if (fenced && line.strip().startsWith(fence)) {
            fence = "";
        }
        return true;
    }

    /** A line of hyphens, stars, underscores or equals signs across the page. */
    private static boolean isRule(String line) {
        int start = afterQuotes(line);
        int marks = 0;
        for (int at = start; at < line.length(); at++) {
            boolean blank = line.charAt(at) == ' ' || line.charAt(at) == '\t';
            if (!blank && (line.charAt(at) != line.charAt(start))) {
                return false;
            }
            marks += blank ? 0 : 1;
        }
        return marks >= 2 && "-*_=".indexOf(line.charAt(start)) >= 0;
    }

    private static int afterQuotes(String line) {
        int at = 0;
        while (at < line.length() && " \t>".indexOf(line.charAt(at)) >= 0) {
            at++;
        }
        return at;
    }

    private void prose(String line, int origin) {
        int start = afterQuotes(line);
        Matcher mark = MARK.matcher(line).region(start, line.length());
        boolean marked = mark.lookingAt();
        boolean heading = marked && line.charAt(start) == '#';
        if (marked) {
            close();
            inList = !heading;
            start = mark.end();
        } else if (blankBefore && start == 0) {
            inList = false;
        }
        if (!open.isEmpty()) {
            open.add(' ', origin, false);
        }
        Inlines.read(line.substring(start), origin + start, open);
        if (heading) {
            close();
        }
    }

    private void close() {
        if (!open.isEmpty()) {
            blocks.add(open);
            open = new Prose();
        }
    }
}
