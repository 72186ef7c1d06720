package counterstep.check.wording;

import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Step;
import counterstep.words.Sentence;
import counterstep.words.Thing;
import counterstep.words.Things;
import counterstep.words.Token;
import counterstep.words.Vocabulary;
import counterstep.words.WordClass;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The numbers in a step's text, each with the items of its actions that it may count. */
final class Counted {
    private final Index index;
    private final Vocabulary vocabulary;
    private final Map<Item, Set<String>> names = new LinkedHashMap<>();
    private final Map<Item, Set<String>> others = new LinkedHashMap<>();
    private final Map<Item, Set<String>> wholes = new LinkedHashMap<>();
    private final Map<Item, List<Token>> numbers = new LinkedHashMap<>();
    private final Map<Item, List<Integer>> counts = new LinkedHashMap<>();
    private final Set<Item> unsure = new HashSet<>();

    /** Reads the numbers of one text of a step: its title or its instruction. */
    Counted(Index index, Step step, List<Sentence> text, Vocabulary vocabulary) {
        this.index = index;
        this.vocabulary = vocabulary;
        List<Thing> things =
                step.actions().isEmpty()
                        ? List.of()
                        : text.stream()
                                .flatMap(sentence -> Things.counted(sentence, vocabulary).stream())
                                .toList();
        if (!things.isEmpty()) {
            for (Action action : step.actions()) {
                action.item().map(index::item).ifPresent(item -> add(item, action.count()));
            }
            things.forEach(this::assign);
        }
    }

    private void add(Item item, int count) {
        counts.computeIfAbsent(item, any -> new ArrayList<>()).add(count);
        names.computeIfAbsent(item, any -> stems(List.of(item.name().split("\\s+"))));
        others.computeIfAbsent(item, any -> stems(KnownThings.names(item, vocabulary)));
    }

    /** Whether a word names what an item holds: 'screws of the trim ring' are 'ring screws'. */
    private boolean namesWhole(String stem, Item item) {
        return wholes.computeIfAbsent(item, any -> stems(wordsOfWhatItHolds(item))).contains(stem);
    }

    private List<String> wordsOfWhatItHolds(Item item) {
        return index.procedure().items().stream()
                .filter(part -> part instanceof Part held && holds(item, held))
                .flatMap(part -> Stream.of(part.name().split("\\s+")))
                .toList();
    }

    private static boolean holds(Item item, Part part) {
        return part.heldBy().stream().anyMatch(hold -> hold.holder().equals(item.id()));
    }

    private Set<String> stems(List<String> words) {
        Set<String> stems = new HashSet<>();
        words.forEach(word -> stems.add(vocabulary.stem(word)));
        return stems;
    }

    private void assign(Thing thing) {
        List<Item> best = new ArrayList<>();
        int most = 1;
        for (Item item : counts.keySet()) {
            int fit = fit(thing, item);
            if (fit > most) {
                best.clear();
                most = fit;
            }
            if (fit == most) {
                best.add(item);
            }
        }
        if (best.size() > 1) {
            unsure.addAll(best);
        }
        best.forEach(
                item -> numbers.computeIfAbsent(item, any -> new ArrayList<>()).add(thing.verb()));
    }

    /** How many words of a name fit an item; 0 where its head or another word does not. */
    private int fit(Thing thing, Item item) {
        String head = vocabulary.stem(thing.head().text());
        if (!names.get(item).contains(head) && !others.get(item).contains(head)) {
            return 0;
        }
        int fit = 0;
        for (Token word : thing.words()) {
            String stem = vocabulary.stem(word.text());
            if (names.get(item).contains(stem)) {
                fit += 2;
            } else if (others.get(item).contains(stem) || namesWhole(stem, item)) {
                fit++;
            } else if (word.number() < 0 && !(word.is(WordClass.QUALIFIER) && plain(item))) {
                return 0;
            }
        }
        return fit;
    }

    /** Whether nothing in the name tells it from others: 'long screws' are no 'short screws'. */
    private boolean plain(Item item) {
        return names.get(item).stream().noneMatch(word -> vocabulary.is(word, WordClass.QUALIFIER));
    }

    /** The items whose numbers cannot be what the actions count. */
    List<ItemId> differing() {
        return numbers.keySet().stream().filter(this::differs).map(Item::id).toList();
    }

    /** The numbers that count an item. */
    List<Token> numbers(ItemId item) {
        return numbers.entrySet().stream()
                .filter(entry -> entry.getKey().id().equals(item))
                .flatMap(entry -> entry.getValue().stream())
                .toList();
    }

    /** A number may be a count, all counts together, a part of them, or what is left of a set. */
    private boolean differs(Item item) {
        if (unsure.contains(item)) {
            return false;
        }
        List<Integer> said = numbers.get(item).stream().map(Token::number).toList();
        Set<Integer> values = new HashSet<>(said);
        Set<Integer> meant = new HashSet<>(counts.get(item));
        meant.add(counts.get(item).stream().mapToInt(Integer::intValue).sum());
        Set<Integer> read = new HashSet<>(values);
        read.add(said.stream().mapToInt(Integer::intValue).sum());
        return meant.stream()
                .noneMatch(
                        count ->
                                read.contains(count)
                                        || values.stream()
                                                .anyMatch(one -> values.contains(one - count)));
    }
}
