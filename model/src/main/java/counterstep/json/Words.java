package counterstep.json;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words that a field knows, and what each means.
 *
 * @param what what the word says: 'verb'
 * @param meanings word to meaning, in the order of the trade
 * @param <E> the meaning
 */
record Words<E>(String what, Map<String, E> meanings) {
    private static final int ALL_ARE_SHOWN = 13;
    private static final int NEAREST = 5;

    static <E> Words<E> of(String what, E[] meanings, Function<E, String> word) {
        Map<String, E> byWord = new LinkedHashMap<>();
        Arrays.stream(meanings).forEach(meaning -> byWord.put(word.apply(meaning), meaning));
        return new Words<>(what, byWord);
    }

    Optional<E> find(String word) {
        return Optional.ofNullable(meanings.get(word));
    }

    /** What to write instead of a word that is none. */
    String remedy(String wrong) {
        if (meanings.size() <= ALL_ARE_SHOWN) {
            return "possible: " + listed(meanings.keySet().stream());
        }
        return "nearest: "
                + listed(
                        meanings.keySet().stream()
                                .sorted(Comparator.comparingInt(word -> distance(word, wrong)))
                                .limit(NEAREST));
    }

    private static String listed(Stream<String> words) {
        return words.collect(Collectors.joining(", "));
    }

    /** How many letters to put in, take out or change (Levenshtein 1966), long words cut. */
    private static int distance(String word, String wrong) {
        String other = wrong.substring(0, Math.min(wrong.length(), 40));
        int[] row = new int[other.length() + 1];
        Arrays.setAll(row, place -> place);
        for (int i = 1; i <= word.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int changed = corner + (word.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                corner = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[other.length()];
    }
}
