package counterstep.shorthand;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One entry of a line taken apart by its signs, before its words are read: 'note gap (in mm) =
 * 0.5'.
 *
 * @param words what is done to what
 * @param facts what stands in brackets: facts of the item; may be empty
 * @param reading what stands behind an equals sign: what is noted, measured or judged
 * @param remark what stands behind a dash: how
 */
record Clause(String words, String facts, String reading, String remark) {
    private static final Pattern READING = Pattern.compile("(?:^|\\s)=(?:\\s|$)");
    private static final Pattern REMARK = Pattern.compile("\\s[-–](?:\\s|$)");

    static Clause of(String said) {
        int open = opening(said);
        int close = open < 0 ? -1 : closing(said, open);
        if (open < 0) {
            return signs(said, "");
        }
        String facts = said.substring(open + 1, close < 0 ? said.length() : close).strip();
        String rest = close < 0 ? "" : said.substring(close + 1);
        return signs(said.substring(0, open) + " " + rest, facts);
    }

    private static Clause signs(String said, String facts) {
        Matcher reading = READING.matcher(said);
        if (reading.find()) {
            return new Clause(
                    tidy(said.substring(0, reading.start())),
                    facts,
                    tidy(said.substring(reading.end())),
                    "");
        }
        Matcher remark = REMARK.matcher(said);
        if (remark.find()) {
            return new Clause(
                    tidy(said.substring(0, remark.start())),
                    facts,
                    "",
                    tidy(said.substring(remark.end())));
        }
        return new Clause(tidy(said), facts, "", "");
    }

    /** Where the words in a bracket begin that is not closed; -1 where all are. */
    static int openBracket(String said) {
        int open = opening(said);
        return open >= 0 && closing(said, open) < 0 ? open + 1 : -1;
    }

    /** Where the reading or the remark begins; the end where there is none. */
    static int sign(String said) {
        Matcher reading = READING.matcher(said);
        Matcher remark = REMARK.matcher(said);
        int end = reading.find() ? reading.start() : said.length();
        return remark.find() ? Math.min(end, remark.start()) : end;
    }

    /** Whether nothing begun there goes on behind it: no bracket, reading or remark. */
    static boolean open(String before) {
        long opened = before.chars().filter(sign -> sign == '(').count();
        long closed = before.chars().filter(sign -> sign == ')').count();
        return opened <= closed && sign(before + " ") == before.length() + 1;
    }

    /** The bracket that follows a thing; behind an equals sign or a dash it is only written. */
    private static int opening(String said) {
        int open = said.indexOf('(');
        String before = open < 0 ? "" : said.substring(0, open);
        boolean written = READING.matcher(before).find() || REMARK.matcher(before).find();
        return written || before.isBlank() ? -1 : open;
    }

    private static int closing(String said, int open) {
        int depth = 0;
        for (int at = open; at < said.length(); at++) {
            depth += said.charAt(at) == '(' ? 1 : said.charAt(at) == ')' ? -1 : 0;
            if (depth == 0) {
                return at;
            }
        }
        return -1;
    }

    private static String tidy(String words) {
        return words.strip().replaceAll("\\s+", " ");
    }
}
