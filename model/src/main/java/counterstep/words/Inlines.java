package counterstep.words;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads a line of CommonMark as what is seen of it: emphasis without its stars, links as their
 * words, code as a name, escapes and the common entities as their characters. A span that goes over
 * several lines keeps its marks, which are no words.
 */
final class Inlines {
    private static final Map<String, Character> ENTITIES =
            Map.of(
                    "amp", '&', "lt", '<', "gt", '>', "quot", '"', "nbsp", ' ', "deg", '°', "times",
                    '×', "micro", 'µ', "Omega", 'Ω');
    private static final String MARKS = "\\`*_![]<&";
    private static final int LONGEST_ENTITY = 6;
    private static final int LONGEST_ADDRESS = 2000;
    private static final Pattern ADDRESS = Pattern.compile("[^\\s<>:]++:[^\\s<>]*+");

    private final String line;
    private final int origin;
    private final Prose into;
    private final Set<Integer> unclosedRuns = new HashSet<>();
    private final Set<Character> unclosed = new HashSet<>();
    private int at;

    private Inlines(String line, int origin, Prose into) {
        this.line = line;
        this.origin = origin;
        this.into = into;
    }

    static void read(String line, int origin, Prose into) {
        Inlines reading = new Inlines(line, origin, into);
        while (reading.at < line.length()) {
            reading.next();
        }
    }

    private void next() {
        char letter = line.charAt(at);
        switch (letter) {
            case '\\' -> escape();
            case '`' -> code();
            case '*', '_' -> emphasis(letter);
            case '!' -> exclamation();
            case '[' -> at++;
            case ']' -> linkEnd();
            case '<' -> angle();
            case '&' -> entity();
            default -> plain();
        }
    }

    private void plain() {
        int end = at + 1;
        while (end < line.length() && MARKS.indexOf(line.charAt(end)) < 0) {
            end++;
        }
        keep(end - at);
    }

    private void keep(int count) {
        for (int last = at + count; at < last; at++) {
            into.add(line.charAt(at), origin + at, false);
        }
    }

    private void escape() {
        boolean escaped = at + 1 < line.length() && !Character.isLetterOrDigit(line.charAt(at + 1));
        at += escaped ? 1 : 0;
        keep(1);
    }

    private int run(char mark, int from) {
        int end = from;
        while (end < line.length() && line.charAt(end) == mark) {
            end++;
        }
        return end - from;
    }

    private void code() {
        int ticks = run('`', at);
        int end = unclosedRuns.contains(ticks) ? -1 : codeEnd(ticks);
        if (end < 0) {
            unclosedRuns.add(ticks);
            at += ticks;
            return;
        }
        for (at += ticks; at < end; at++) {
            into.add(line.charAt(at), origin + at, true);
        }
        at += ticks;
    }

    private int codeEnd(int ticks) {
        int place = line.indexOf('`', at + ticks);
        while (place >= 0) {
            int run = run('`', place);
            if (run == ticks) {
                return place;
            }
            place = line.indexOf('`', place + run);
        }
        return -1;
    }

    /** Marks go; those that stand alone or inside a word are meant: a blank to fill in, T_4. */
    private void emphasis(char mark) {
        int run = run(mark, at);
        boolean afterWord = at > 0 && !Character.isWhitespace(line.charAt(at - 1));
        boolean beforeWord =
                at + run < line.length() && !Character.isWhitespace(line.charAt(at + run));
        boolean inside =
                mark == '_' && letterAt(at - 1) && letterAt(at + run) || !afterWord && !beforeWord;
        if (inside) {
            keep(run);
        } else {
            at += run;
        }
    }

    private boolean letterAt(int place) {
        return place >= 0 && place < line.length() && Character.isLetterOrDigit(line.charAt(place));
    }

    private void exclamation() {
        if (line.startsWith("![", at)) {
            at += 2;
        } else {
            keep(1);
        }
    }

    /** After the words of a link comes its address or its label, which nobody reads. */
    private void linkEnd() {
        at++;
        char open = at < line.length() ? line.charAt(at) : ' ';
        if (open == '(' || open == '[') {
            int end = closing(open == '(' ? ')' : ']');
            at = end < 0 ? at : end + 1;
        }
    }

    /** The place of the next such mark; -1 where none comes, which is looked for only once. */
    private int closing(char mark) {
        int end = unclosed.contains(mark) ? -1 : line.indexOf(mark, at);
        if (end < 0) {
            unclosed.add(mark);
        }
        return end;
    }

    /** An address in angle brackets is one name. */
    private void angle() {
        int end = at + 1;
        while (end < line.length() && end - at < LONGEST_ADDRESS && inAddress(line.charAt(end))) {
            end++;
        }
        boolean closed = end < line.length() && line.charAt(end) == '>';
        boolean address = closed && ADDRESS.matcher(line).region(at + 1, end).matches();
        if (!address) {
            keep(1);
            return;
        }
        for (at++; at < end; at++) {
            into.add(line.charAt(at), origin + at, true);
        }
        at++;
    }

    private static boolean inAddress(char letter) {
        return letter > ' ' && letter != '<' && letter != '>';
    }

    private void entity() {
        int end = at + 1;
        while (end < line.length() && end - at < LONGEST_ENTITY && letterAt(end)) {
            end++;
        }
        boolean near = end < line.length() && line.charAt(end) == ';';
        Character meant = near ? ENTITIES.get(line.substring(at + 1, end)) : null;
        if (meant == null) {
            keep(1);
            return;
        }
        into.add(meant, origin + at, false);
        at = end + 1;
    }
}
