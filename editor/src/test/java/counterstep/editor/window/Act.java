package counterstep.editor.window;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One act of a writer as a page of the docs tells it: a numbered line.
 *
 * @param number as numbered there
 * @param does what is done: Click, Fill in, Press, Type, Choose, Number, Drag
 * @param what what is clicked, pressed, typed or chosen, or where on a photo
 * @param then what is said behind it
 */
record Act(int number, String does, String what, String then) {
    private static final Pattern LINE =
            Pattern.compile(
                    "(\\d+)\\. (Click|Fill in|Press|Type|Choose|Number|Drag)(?: \\*\\*| `| )(.+)");

    /** The acts of a page, in order. */
    static List<Act> of(String page) {
        return page.lines().filter(line -> line.matches("\\d+\\. .*")).map(Act::read).toList();
    }

    private static Act read(String line) {
        Matcher read = LINE.matcher(line);
        if (!read.matches()) {
            throw new IllegalArgumentException("no act: " + line);
        }
        String rest = read.group(3);
        String end = switchOn(read.group(2));
        int close = rest.lastIndexOf(end);
        return new Act(
                Integer.parseInt(read.group(1)),
                read.group(2),
                rest.substring(0, close),
                rest.substring(close + end.length()));
    }

    private static String switchOn(String does) {
        return switch (does) {
            case "Click" -> "**";
            case "Press" -> ".";
            default -> "`";
        };
    }
}
