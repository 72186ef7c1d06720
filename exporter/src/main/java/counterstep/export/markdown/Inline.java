package counterstep.export.markdown;

/** Text of the document inside a line of Markdown: it can neither format nor link nor embed. */
public final class Inline {
    private static final String SPECIAL = "\\`*_[]<>&#!|~";

    private Inline() {}

    /** The text on one line, with a backslash before whatever Markdown would take for its own. */
    public static String escaped(String text) {
        String line = onOneLine(text);
        StringBuilder safe = new StringBuilder(line.length() + 8);
        for (int at = 0; at < line.length(); at++) {
            char sign = line.charAt(at);
            boolean inWord = sign == '_' && betweenLetters(line, at);
            boolean harmless = sign == '&' && isFreeStanding(line, at);
            boolean exclaims = sign == '!' && !startsWith(line, at + 1, '[');
            boolean number = sign == '#' && at > 0;
            if (SPECIAL.indexOf(sign) >= 0 && !inWord && !harmless && !exclaims && !number) {
                safe.append('\\');
            }
            safe.append(sign);
        }
        return guarded(safe.toString());
    }

    /** The same without a mark at its start that would open a list, a heading or a rule. */
    private static String guarded(String line) {
        if (line.matches("(?s)[-+=].*")) {
            return "\\" + line;
        }
        return line.replaceFirst("^(\\d{1,9})([.)])(?=\\s|$)", "$1\\\\$2");
    }

    /** An address of the web or of mail, as it may stand between pointed brackets. */
    static String address(String address) {
        return address.replace("\\", "%5C").replace("<", "%3C").replace(">", "%3E");
    }

    /** Code, fenced by more backticks than stand in it. */
    static String code(String text) {
        String fence = "`".repeat(longestRun(text) + 1);
        String line = onOneLine(text);
        return fence + " " + line + " " + fence;
    }

    static int longestRun(String text) {
        int longest = 0;
        int run = 0;
        for (int at = 0; at < text.length(); at++) {
            run = text.charAt(at) == '`' ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    private static String onOneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029\\u202D\\u202E]+", " ").strip();
    }

    private static boolean betweenLetters(String line, int at) {
        return at > 0
                && at + 1 < line.length()
                && Character.isLetterOrDigit(line.charAt(at - 1))
                && Character.isLetterOrDigit(line.charAt(at + 1));
    }

    private static boolean isFreeStanding(String line, int at) {
        return startsWith(line, at + 1, ' ');
    }

    private static boolean startsWith(String line, int at, char sign) {
        return at >= line.length() ? sign == ' ' : line.charAt(at) == sign;
    }
}
