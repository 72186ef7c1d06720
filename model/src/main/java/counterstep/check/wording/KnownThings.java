package counterstep.check.wording;

import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.model.Procedure;
import counterstep.model.TitleBlock;
import counterstep.words.Thing;
import counterstep.words.Token;
import counterstep.words.Vocabulary;
import counterstep.words.WordClass;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The words that name something the document knows: items, tools, supplies, the device. */
final class KnownThings {
    private static final Pattern HYPHENS = Pattern.compile("[-\u2011/]");

    private final Vocabulary vocabulary;
    private final Set<String> stems = new HashSet<>();

    KnownThings(Procedure procedure, Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        for (Item item : procedure.items()) {
            add(item.name());
            names(item, vocabulary).forEach(this::add);
        }
        procedure.tools().forEach(tool -> add(tool.name() + " " + tool.kind().word()));
        procedure.supplies().forEach(supply -> add(supply.name()));
        TitleBlock block = procedure.titleBlock();
        add(block.title() + " " + block.summary());
        add(block.device().model() + " " + block.device().designation());
        block.conditions().forEach(this::add);
    }

    /** What else an item may be called, by its kind and form. */
    static List<String> names(Item item, Vocabulary vocabulary) {
        Set<String> names = new HashSet<>(vocabulary.names(item.match(KindWord.INSTANCE)));
        if (item instanceof FastenerSet set) {
            names.addAll(vocabulary.names(set.form().word()));
        }
        return List.copyOf(names);
    }

    private void add(String text) {
        for (var sentence : vocabulary.sentences(text)) {
            sentence.tokens().forEach(token -> stems.add(vocabulary.stem(token.text())));
        }
    }

    /**
     * Whether a thing may well be known. One known word is enough, unless its head is a part as
     * devices have them.
     */
    boolean known(Thing thing) {
        if (vocabulary.is(vocabulary.stem(thing.head().text()), WordClass.PART)) {
            return !thing.verb().is(WordClass.MOVING_COMMAND) || word(thing.head());
        }
        return !thing.verb().is(WordClass.HANDLING_COMMAND)
                || thing.words().stream().allMatch(this::quality)
                || thing.words().stream().anyMatch(this::word);
    }

    private boolean quality(Token token) {
        return token.is(WordClass.QUALIFIER) || token.is(WordClass.PARTICLE) || token.number() >= 0;
    }

    private boolean word(Token token) {
        return token.label()
                || !quality(token) && known(token.lower())
                || Stream.of(HYPHENS.split(token.lower())).anyMatch(this::known);
    }

    private boolean known(String word) {
        String stem = vocabulary.stem(word);
        return stems.contains(stem)
                || vocabulary.is(stem, WordClass.GENERAL)
                || vocabulary.is(word, WordClass.GENERAL);
    }
}
