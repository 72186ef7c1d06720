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
    private static final Pattern LINE_END = Pattern.compile("\r\n|[\r\n]");
    private static final Pattern FENCE = Pattern.compile(" {0,3}(`{3,}|~{3,}).*");
    private static final Pattern MARK =
            Pattern.compile("(?:#{1,6}|[-*+]|[0-9]{1,9}[.)])(?:[ \t]++|$)");
    private static final Pattern REFERENCE = Pattern.compile(" {0,3}\\[[^\\]]++\\]:\\s.*");
    private static final Pattern INDENTED = Pattern.compile("(?: {4}|\t).*");

    private final List<Prose> blocks = new ArrayList<>();
    private Prose open = new Prose();
    private String fence = "";
    private boolean blankBefore = true;
    private boolean inList;

    private Blocks() {}

    static List<Prose> of(String commonMark) {
        Blocks reading = new Blocks();
        Matcher end = LINE_END.matcher(commonMark);
        int start = 0;
        while (end.find()) {
            reading.line(commonMark.substring(start, end.start()), start);
            start = end.end();
        }
        reading.line(commonMark.substring(start), start);
        reading.close();
        return reading.blocks;
    }

    private void line(String line, int origin) {
        boolean blank = line.isBlank();
        boolean noProse =
                inFence(line) || blank || isRule(line) || REFERENCE.matcher(line).matches();
        if (noProse) {
            close();
        } else if (!(blankBefore && !inList && INDENTED.matcher(line).matches())) {
            prose(line, origin);
        }
        blankBefore = blank || blankBefore && open.isEmpty();
    }

    private boolean inFence(String line) {
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
