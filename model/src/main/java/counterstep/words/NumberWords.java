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
        boolean figures =
                !word.isEmpty()
                        && word.length() <= MOST_FIGURES
                        && word.chars().allMatch(letter -> letter >= '0' && letter <= '9');
        return figures ? OptionalInt.of(Integer.parseInt(word)) : OptionalInt.empty();
    }

    /** The number as a sentence writes it: words up to twelve (common practice), then figures. */
    public String written(int number) {
        return words.getOrDefault(number, Integer.toString(number));
    }
}
