package counterstep.shorthand;

import counterstep.words.TradeWords;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One piece of what stands in brackets.
 *
 * @param all as typed
 * @param phrase the words that begin a fact; empty where they begin none
 * @param fact which fact that is; may be empty
 * @param rest what follows these words, without quotation marks around it
 */
record FactWords(String all, String phrase, String fact, String rest) {
    static FactWords of(String all, TradeWords trade) {
        String lower = all.toLowerCase(Locale.ROOT);
        String longest = "";
        for (String phrase : trade.facts().keySet()) {
            boolean begins = lower.equals(phrase) || lower.startsWith(phrase + " ");
            longest = begins && phrase.length() > longest.length() ? phrase : longest;
        }
        String fact = longest.isEmpty() ? "" : trade.facts().get(longest);
        String rest = all.substring(longest.length()).strip();
        boolean quoted = rest.length() > 1 && rest.startsWith("\"") && rest.endsWith("\"");
        return new FactWords(
                all, longest, fact, quoted ? rest.substring(1, rest.length() - 1).strip() : rest);
    }

    /** Whether it is nothing but the words of the fact. */
    boolean bare() {
        return rest.isEmpty();
    }

    /** Whether one word or phrase follows, and no list. */
    boolean single() {
        return !rest.isEmpty() && rest.indexOf(',') < 0;
    }

    /** The sort that all of it names. */
    Optional<String> sort(String ofWhat, TradeWords trade) {
        return Optional.ofNullable(trade.sorts(ofWhat).get(all.toLowerCase(Locale.ROOT)));
    }

    /** The sort that what follows names. */
    Optional<String> sortOfRest(String ofWhat, TradeWords trade) {
        Map<String, String> sorts = trade.sorts(ofWhat);
        return Optional.ofNullable(sorts.get(rest.toLowerCase(Locale.ROOT)));
    }
}
