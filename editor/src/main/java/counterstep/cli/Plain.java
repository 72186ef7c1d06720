package counterstep.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** Text as a terminal may show it: words of a document never steer the terminal. */
final class Plain {
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]+");

    private Plain() {}

    /** The text on one line, without control or direction characters. */
    static String line(String text) {
        return CONTROL.matcher(text).replaceAll(" ").strip();
    }

    /** The text on one line of at most {@code width} characters, cut with an ellipsis. */
    static String cut(String text, int width) {
        String line = line(text);
        int length = line.codePointCount(0, line.length());
        return length <= width
                ? line
                : line.substring(0, line.offsetByCodePoints(0, width - 1)).stripTrailing() + "…";
    }

    /** A writer of UTF-8 on a stream. */
    static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }
}
