package counterstep.json;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/** A value on one line, given up as soon as it is longer than the line. */
final class JsonLine {
    private final String colon;
    private final String comma;
    private final int longest;
    private final StringBuilder out = new StringBuilder();

    JsonLine(String colon, String comma, int longest) {
        this.colon = colon;
        this.comma = comma;
        this.longest = longest;
    }

    Optional<String> of(Object value) {
        return fits(value) ? Optional.of(out.toString()) : Optional.empty();
    }

    private boolean fits(Object given) {
        Object value = JsonScalars.opened(given);
        if (value instanceof Map<?, ?> map) {
            return fitsMap(map);
        }
        if (value instanceof Collection<?> list) {
            return fitsList(list);
        }
        return append(JsonScalars.text(value));
    }

    private boolean fitsMap(Map<?, ?> map) {
        String start = "{";
        for (Map.Entry<?, ?> field : map.entrySet()) {
            String name = JsonScalars.quoted(String.valueOf(field.getKey()));
            if (!append(start + name + colon) || !fits(field.getValue())) {
                return false;
            }
            start = comma;
        }
        return append(map.isEmpty() ? "{}" : "}");
    }

    private boolean fitsList(Collection<?> list) {
        String start = "[";
        for (Object element : list) {
            if (!append(start) || !fits(element)) {
                return false;
            }
            start = comma;
        }
        return append(list.isEmpty() ? "[]" : "]");
    }

    private boolean append(String text) {
        out.append(text);
        return out.length() <= longest;
    }
}
