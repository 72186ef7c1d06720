package counterstep.json;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/**
 * JSON text of plain values: maps (fields in their order), collections, texts, numbers, booleans
 * and optional values, an empty one being null.
 *
 * <p>The pretty form is made for diffs: an object that fits on a line stands on one, anything
 * longer has a line for each field, and each object of a list has lines of its own.
 */
public final class JsonText {
    private static final int WIDTH = 100;
    private static final String INDENT = "  ";

    private final StringBuilder out = new StringBuilder();

    private JsonText() {}

    /**
     * Pretty text, no line end after the last line.
     *
     * @throws IllegalArgumentException for a value of another type, or a number that JSON has not
     */
    public static String of(Object value) {
        JsonText text = new JsonText();
        text.pretty(value, "", 0);
        return text.out.toString();
    }

    /**
     * Text without any line end or space between values.
     *
     * @throws IllegalArgumentException for a value of another type, or a number that JSON has not
     */
    public static String compact(Object value) {
        return new JsonLine(":", ",", Integer.MAX_VALUE).of(value).orElseThrow();
    }

    private void pretty(Object given, String indent, int used) {
        Object value = JsonScalars.opened(given);
        int width = WIDTH - indent.length() - used;
        Optional<String> onOneLine =
                hasObjectInList(value)
                        ? Optional.empty()
                        : new JsonLine(": ", ", ", width).of(value);
        if (onOneLine.isPresent()) {
            out.append(onOneLine.get());
        } else if (value instanceof Map<?, ?> map) {
            prettyMap(map, indent);
        } else if (value instanceof Collection<?> list) {
            prettyList(list, indent);
        } else {
            out.append(JsonScalars.text(value));
        }
    }

    private void prettyMap(Map<?, ?> map, String indent) {
        String start = "{\n";
        for (Map.Entry<?, ?> field : map.entrySet()) {
            String name = JsonScalars.quoted(String.valueOf(field.getKey())) + ": ";
            out.append(start).append(indent).append(INDENT).append(name);
            pretty(field.getValue(), indent + INDENT, name.length());
            start = ",\n";
        }
        out.append('\n').append(indent).append('}');
    }

    private void prettyList(Collection<?> list, String indent) {
        String start = "[\n";
        for (Object element : list) {
            out.append(start).append(indent).append(INDENT);
            pretty(element, indent + INDENT, 0);
            start = ",\n";
        }
        out.append('\n').append(indent).append(']');
    }

    private static boolean hasObjectInList(Object given) {
        Object value = JsonScalars.opened(given);
        if (value instanceof Map<?, ?> map) {
            return map.values().stream().anyMatch(JsonText::hasObjectInList);
        }
        return value instanceof Collection<?> list
                && list.stream()
                        .map(JsonScalars::opened)
                        .anyMatch(each -> each instanceof Map || hasObjectInList(each));
    }
}
