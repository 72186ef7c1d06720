package counterstep.json;

/** Text from a file, fit for a message of one line: no control characters, not too long. */
final class OneLine {
    private static final int LONGEST = 300;
    private static final int LONGEST_QUOTE = 60;

    private OneLine() {}

    static String of(String text) {
        return of(text, LONGEST);
    }

    /** In quotes, cut short. */
    static String quoted(String text) {
        return "'" + of(text, LONGEST_QUOTE) + "'";
    }

    static String of(String text, int longest) {
        boolean cut = text.codePointCount(0, text.length()) > longest;
        int end = cut ? text.offsetByCodePoints(0, longest) : text.length();
        StringBuilder line = new StringBuilder();
        text.substring(0, end)
                .codePoints()
                .forEach(point -> line.appendCodePoint(harmless(point) ? point : '\uFFFD'));
        return cut ? line + "…" : line.toString();
    }

    private static boolean harmless(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE -> false;
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
