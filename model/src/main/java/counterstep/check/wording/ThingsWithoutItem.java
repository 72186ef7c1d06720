package counterstep.check.wording;

import counterstep.check.Facts;
import counterstep.words.Sentence;
import counterstep.words.Thing;
import counterstep.words.Things;
import counterstep.words.Vocabulary;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Things that the texts act on and that no item, tool or supply is called by. */
public final class ThingsWithoutItem {
    private ThingsWithoutItem() {}

    /** Their names in small letters, each once, in page order; none where no text can be read. */
    public static List<String> of(Facts facts) {
        return facts.wording().vocabulary().stream()
                .flatMap(words -> of(facts, words))
                .distinct()
                .toList();
    }

    private static Stream<String> of(Facts facts, Vocabulary words) {
        KnownThings known = new KnownThings(facts.procedure(), words);
        return facts.procedure().steps().stream()
                .flatMap(step -> in(facts.wording().sentences(step), words, known));
    }

    /** Those of some sentences, each as often as it is named. */
    static Stream<String> in(List<Sentence> sentences, Vocabulary words, KnownThings known) {
        return sentences.stream()
                .flatMap(sentence -> Things.actedOn(sentence, words).stream())
                .filter(thing -> !known.known(thing))
                .map(Thing::text)
                .map(text -> text.toLowerCase(Locale.ROOT));
    }
}
