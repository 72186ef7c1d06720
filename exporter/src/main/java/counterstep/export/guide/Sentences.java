package counterstep.export.guide;

import java.util.List;
import java.util.Locale;

/** Words put together into sentences. */
public final class Sentences {
    private static final String ENDS = ".!?:;";

    private Sentences() {}

    /** With a full stop where the writer left it out. */
    public static String closed(String sentence) {
        String text = sentence.strip();
        boolean open = !text.isEmpty() && ENDS.indexOf(text.charAt(text.length() - 1)) < 0;
        return open ? text + "." : text;
    }

    /** With a capital letter at the start. */
    public static String begun(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    /** 'one thing', '2 things'. */
    public static String counted(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** Those that are not blank, with a comma between. */
    public static String listed(List<String> words) {
        return String.join(", ", words.stream().filter(word -> !word.isBlank()).toList());
    }
}
