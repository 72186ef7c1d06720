package counterstep.mirror;

import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.Part;
import counterstep.model.Verb;
import counterstep.words.Phrasing;
import counterstep.words.Vocabulary;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Title and text of countersteps in the language of the document. */
final class CounterstepWords {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

    private final Index index;
    private final Phrasing phrasing;
    private final Vocabulary vocabulary;

    CounterstepWords(Index index) {
        this.index = index;
        String language = index.procedure().titleBlock().language();
        this.phrasing = Phrasing.of(language);
        this.vocabulary = Vocabulary.of(language).or(() -> Vocabulary.of("en")).orElseThrow();
    }

    private Optional<Item> item(Action action) {
        return action.item().map(index::item);
    }

    /** By the part that goes on; where none does, by what is done last. */
    String title(List<Action> actions) {
        Action named =
                actions.stream()
                        .filter(MustPrecede::putsOn)
                        .filter(action -> item(action).orElseThrow() instanceof Part)
                        .findFirst()
                        .orElseGet(() -> last(actions));
        return phrasing.title(named, item(named));
    }

    private static Action last(List<Action> actions) {
        return actions.stream()
                .filter(action -> action.verb() != Verb.DISCARD)
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    /** One sentence an action. */
    String text(List<Action> actions) {
        return actions.stream().map(this::sentence).collect(Collectors.joining(" "));
    }

    /** The action as a sentence. */
    String sentence(Action action) {
        return phrasing.instruction(action, item(action));
    }

    /**
     * A text with the number of an item changed, where it stands there plainly: once, or once
     * before a word of the item's name.
     */
    String recounted(String text, Action action, int count) {
        List<MatchResult> words = WORD.matcher(text).results().toList();
        List<Integer> places =
                IntStream.range(0, words.size())
                        .filter(
                                place ->
                                        value(words.get(place))
                                                .equals(OptionalInt.of(action.count())))
                        .boxed()
                        .toList();
        if (places.size() > 1) {
            places = places.stream().filter(place -> names(words, place, action)).toList();
        }
        if (places.size() != 1) {
            return text;
        }
        MatchResult old = words.get(places.get(0));
        return text.substring(0, old.start())
                + like(old.group(), count)
                + text.substring(old.end());
    }

    private OptionalInt value(MatchResult word) {
        return vocabulary.numbers().value(word.group());
    }

    /** Whether one of the next three words stands in the name of the item. */
    private boolean names(List<MatchResult> words, int place, Action action) {
        List<String> name =
                WORD.matcher(item(action).map(Item::name).orElse(""))
                        .results()
                        .map(MatchResult::group)
                        .toList();
        return words.subList(place + 1, Math.min(words.size(), place + 4)).stream()
                .map(MatchResult::group)
                .anyMatch(name::contains);
    }

    /** In figures where the old one was, with a capital where the old one had it. */
    private String like(String old, int count) {
        if (Character.isDigit(old.charAt(0))) {
            return Integer.toString(count);
        }
        String written = vocabulary.numbers().written(count);
        return Character.isUpperCase(old.charAt(0))
                ? written.substring(0, 1).toUpperCase(Locale.ROOT) + written.substring(1)
                : written;
    }
}
