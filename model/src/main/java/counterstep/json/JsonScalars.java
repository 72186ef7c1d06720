package counterstep.json;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Single values as JSON text. */
final class JsonScalars {
    private static final double SMALLEST_PLAIN = 1e-6;
    private static final double LARGEST_PLAIN = 1e15;
    private static final Json NOTHING = new Json.JsonWord(0, "null");

    private JsonScalars() {}

    /** The map, list or single value that stands in an optional value or in a tree. */
    static Object opened(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? opened(optional.get()) : NOTHING;
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent() ? optional.getAsInt() : NOTHING;
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? optional.getAsDouble() : NOTHING;
        }
        if (value instanceof Json.JsonObject object) {
            return object.fields();
        }
        return value instanceof Json.JsonList list ? list.elements() : value;
    }

    static String text(Object value) {
        if (value instanceof String text) {
            return quoted(text);
        }
        if (value instanceof Json.JsonString string) {
            return quoted(string.text());
        }
        if (value instanceof Json.JsonNumber number) {
            return number.digits();
        }
        if (value instanceof Json.JsonWord word) {
            return word.word();
        }
        if (value instanceof Double number) {
            return decimal(number);
        }
        if (value instanceof Integer
                || value instanceof Long
                || value instanceof Boolean
                || value instanceof BigDecimal) {
            return value.toString();
        }
        throw new IllegalArgumentException("no JSON value: " + value);
    }

    private static String decimal(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("no JSON number: " + value);
        }
        double size = Math.abs(value);
        if (size < SMALLEST_PLAIN || size >= LARGEST_PLAIN) {
            return Double.doubleToRawLongBits(value) == 0 ? "0" : Double.toString(value);
        }
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** In quotes; what JSON or a terminal would stumble over is escaped. */
    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(point -> append(quoted, point));
        return quoted.append('"').toString();
    }

    private static void append(StringBuilder quoted, int point) {
        switch (point) {
            case '"' -> quoted.append("\\\"");
            case '\\' -> quoted.append("\\\\");
            case '\n' -> quoted.append("\\n");
            case '\r' -> quoted.append("\\r");
            case '\t' -> quoted.append("\\t");
            default -> {
                if (Character.isISOControl(point)
                        || Character.getType(point) == Character.SURROGATE
                        || point == '\u2028'
                        || point == '\u2029') {
                    quoted.append("\\u%04x".formatted(point));
                } else {
                    quoted.appendCodePoint(point);
                }
            }
        }
    }
}
