package counterstep.export.html;

import counterstep.export.shape.Mark;
import counterstep.export.shape.SvgMark;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** HTML in the making: whatever comes from the document goes through here and stays text. */
public final class Markup {
    private static final Set<String> EMPTY = Set.of("br", "hr", "img", "input", "meta");
    private static final Set<String> OWN_LINE =
            Set.of("div", "nav", "section", "ol", "ul", "li", "table", "tr", "p", "h1", "h2", "h3");

    private static final String NOT_PLAIN = "&<>\"'";

    /** Side of a mark in CSS pixels; the PDF maker wants whole ones. */
    private static final double MARK = 16;

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are given as name, value, name, value. */
    public Markup open(String element, String... attributes) {
        if (OWN_LINE.contains(element)) {
            out.append('\n');
        }
        out.append('<').append(element);
        for (int pair = 0; pair < attributes.length; pair += 2) {
            out.append(' ').append(attributes[pair]).append("=\"");
            out.append(escaped(attributes[pair + 1])).append('"');
        }
        out.append('>');
        if (!EMPTY.contains(element)) {
            open.push(element);
        }
        return this;
    }

    /** Closes the element opened last. */
    public Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** A whole element that holds text only. */
    public Markup element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    /** Text of the document or our own. */
    public Markup text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** Markup of our own making, which holds nothing of the document. */
    public Markup own(String markup) {
        out.append(markup);
        return this;
    }

    /** The mark of a thing beside its name, in the size of text; nothing where it has none. */
    public Markup mark(Optional<Mark> mark) {
        mark.ifPresent(known -> own(SvgMark.element(known, MARK)).text(" "));
        return this;
    }

    /** Opens a table with its head, and the rows. */
    public Markup openTable(String kind, String... columns) {
        open("table", "class", kind).open("thead").open("tr");
        Stream.of(columns).forEach(column -> element("th", column, "scope", "col"));
        return close().close().open("tbody");
    }

    /** Closes rows and table. */
    public Markup closeTable() {
        return close().close();
    }

    @Override
    public String toString() {
        return out.toString();
    }

    /** Text that is safe between tags and in quoted attributes. */
    static String escaped(String text) {
        return isPlain(text) ? text : escapedOneByOne(text);
    }

    /** Most texts are, and the long ones, which are photos. */
    private static boolean isPlain(String text) {
        for (int place = 0; place < text.length(); place++) {
            char sign = text.charAt(place);
            if (sign < ' ' || sign > '~' || NOT_PLAIN.indexOf(sign) >= 0) {
                return false;
            }
        }
        return true;
    }

    private static String escapedOneByOne(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> append(safe, point));
        return safe.toString();
    }

    private static void append(StringBuilder safe, int point) {
        switch (point) {
            case '&' -> safe.append("&amp;");
            case '<' -> safe.append("&lt;");
            case '>' -> safe.append("&gt;");
            case '"' -> safe.append("&quot;");
            case '\'' -> safe.append("&#39;");
            case '\n', '\t' -> safe.appendCodePoint(point);
            default -> safe.appendCodePoint(printable(point) ? point : 0xFFFD);
        }
    }

    /** Neither a control, nor half of a pair, nor one that turns the direction of what follows. */
    private static boolean printable(int point) {
        boolean override = point == 0x202D || point == 0x202E;
        boolean never = (point & 0xFFFE) == 0xFFFE || (point >= 0xFDD0 && point <= 0xFDEF);
        return !override
                && !never
                && !Character.isISOControl(point)
                && Character.getType(point) != Character.SURROGATE;
    }
}
