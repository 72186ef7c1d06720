package counterstep.shorthand;

import counterstep.words.TradeWords;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Which sort a thing is by the words of the trade in its name: a flat cable, a rivet. */
final class Sort {
    private Sort() {}

    /** The sort whose words stand in a name; of several the longest. */
    static Optional<String> in(String name, String ofWhat, TradeWords trade) {
        String words = " " + name.toLowerCase(Locale.ROOT) + " ";
        String longest = "";
        for (String phrase : trade.sorts(ofWhat).keySet()) {
            boolean there = words.contains(" " + phrase + " ");
            longest = there && phrase.length() > longest.length() ? phrase : longest;
        }
        return Optional.ofNullable(trade.sorts(ofWhat).get(longest));
    }

    /** The value of that word, if there is one. */
    static <E> Optional<E> find(E[] values, Function<E, String> word, String wanted) {
        return Arrays.stream(values).filter(value -> word.apply(value).equals(wanted)).findFirst();
    }

    /** The value of that word. */
    static <E> E value(E[] values, Function<E, String> word, String wanted) {
        return find(values, word, wanted)
                .orElseThrow(() -> new IllegalStateException("no sort: " + wanted));
    }
}
