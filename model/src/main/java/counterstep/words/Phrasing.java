package counterstep.words;

import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.model.Verb;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Says an action as a step's text and title would: 'Take out the four ring screws.' */
public final class Phrasing {
    private final List<Phrase> phrases;
    private final Map<String, String> counted = new HashMap<>();
    private final NumberWords numbers;

    Phrasing(LanguageFile file, NumberWords numbers) {
        this.phrases = file.rows("phrases").stream().map(Phrase::of).toList();
        file.rows("counted").forEach(cells -> counted.put(cells.get(0), cells.get(1)));
        this.numbers = numbers;
    }

    /** The phrases of a language (BCP 47 tag); English where there are none of it yet. */
    public static Phrasing of(String language) {
        return Vocabulary.of(language).orElseGet(Vocabulary::english).phrasing();
    }

    /** So many of an item: 'the main board', 'the six cover screws', 'two of the six ...'. */
    public String things(Item item, int count) {
        return things(item, count, "");
    }

    /** The action as one sentence, which gives one instruction. */
    public String instruction(Action action, Optional<Item> item) {
        Optional<Phrase> phrase = phrase(action, item);
        if (phrase.isEmpty() || item.isEmpty()) {
            return sentence(action.verb().word()) + ".";
        }
        String renewed = action.verb() == Verb.FIT_NEW ? "new " : "";
        String things = things(item.get(), action.count(), renewed);
        return sentence(phrase.get().instruction().replace("{things}", things));
    }

    /** The action as the title of a step: 'Ring screws out'. */
    public String title(Action action, Optional<Item> item) {
        return sentence(
                phrase(action, item)
                        .flatMap(row -> item.map(one -> row.title().replace("{name}", one.name())))
                        .orElse(action.verb().word()));
    }

    private Optional<Phrase> phrase(Action action, Optional<Item> item) {
        List<String> kinds = item.map(Phrasing::kinds).orElse(List.of());
        return phrases.stream().filter(row -> row.suits(action, kinds)).findFirst();
    }

    private static List<String> kinds(Item item) {
        String kind = item.match(KindWord.INSTANCE);
        return item instanceof FastenerSet set ? List.of(set.form().word(), kind) : List.of(kind);
    }

    private String things(Item item, int count, String renewed) {
        int size = item.quantity();
        String form = size == 1 && count == 1 ? "one" : count == size ? "all" : "some";
        return counted.get(renewed + form)
                .replace("{number}", numbers.written(count))
                .replace("{size}", numbers.written(size))
                .replace("{name}", item.name());
    }

    private static String sentence(String words) {
        int first = words.isEmpty() ? 0 : Character.charCount(words.codePointAt(0));
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }
}
