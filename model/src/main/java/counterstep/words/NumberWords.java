package counterstep.words;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/** Whole numbers as a text writes them: small ones in words, others in figures. */
public final class NumberWords {
    /** More figures than any count has. */
    private static final int MOST_FIGURES = 6;

    private final Map<String, Integer> values = new HashMap<>();
    private final Map<Integer, String> words = new HashMap<>();

    NumberWords(LanguageFile file) {
        for (var cells : file.rows("numbers")) {
            int value = Integer.parseInt(cells.get(0));
            words.putIfAbsent(value, cells.get(1));
            values.put(cells.get(1), value);
        }
    }

    /** The number that a word or a row of figures stands for; empty where it is none. */
    public OptionalInt value(String word) {
        Integer named = values.get(word.toLowerCase(Locale.ROOT));
        if (named != null) {
            return OptionalInt.of(named);
        }
        return figures(word) ? OptionalInt.of(Integer.parseInt(word)) : OptionalInt.empty();
    }

    private static boolean figures(String word) {
        int at = 0;
        while (at < word.length() && word.charAt(at) >= '0' && word.charAt(at) <= '9') {
            at++;
        }
        return at > 0 && at == word.length() && at <= MOST_FIGURES;
    }

    /** The number as a sentence writes it: words up to twelve (common practice), then figures. */
    public String written(int number) {
        return words.getOrDefault(number, Integer.toString(number));
    }
}
