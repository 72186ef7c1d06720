package counterstep.shorthand;

import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Items of a document by what they are called. */
final class Named {
    private final Procedure procedure;
    private final Vocabulary vocabulary;

    Named(Procedure procedure, Vocabulary vocabulary) {
        this.procedure = procedure;
        this.vocabulary = vocabulary;
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    /** The words of a name as they compare: small, without the ending of the many. */
    static Set<String> stems(String name, Vocabulary vocabulary) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}.]+"))
                .filter(word -> !word.isEmpty())
                .map(vocabulary::stem)
                .collect(Collectors.toSet());
    }

    /** Whether an item is called just that. */
    boolean same(Item item, String name) {
        return stems(item.name(), vocabulary).equals(stems(name, vocabulary));
    }

    /** The item of that name; else the only suitable one whose name has all the words. */
    Optional<Item> item(String words, Predicate<Item> suits) {
        Set<String> typed = stems(words, vocabulary);
        List<Item> possible =
                procedure.items().stream()
                        .filter(suits)
                        .filter(item -> stems(item.name(), vocabulary).containsAll(typed))
                        .toList();
        Optional<Item> same =
                possible.stream()
                        .filter(item -> stems(item.name(), vocabulary).equals(typed))
                        .findFirst();
        boolean only = possible.size() == 1 && !typed.isEmpty();
        return same.or(() -> only ? Optional.of(possible.get(0)) : Optional.empty());
    }

    /** Several items, 'fan screws, fan nuts and cable tie'; none where one of them is unknown. */
    List<ItemId> items(String words, Predicate<Item> suits) {
        Optional<Item> one = item(words, suits);
        if (one.isPresent()) {
            return List.of(one.get().id());
        }
        List<ItemId> found = new ArrayList<>();
        for (String name : words.split("\\s*,\\s*(?:and\\s+)?|\\s+and\\s+")) {
            Optional<Item> item = item(name.strip(), suits);
            if (item.isEmpty()) {
                return List.of();
            }
            found.add(item.get().id());
        }
        return found;
    }
}
