package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.words.Sentence;
import counterstep.words.Vocabulary;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the text takes off but no action does is followed by no count (common practice). Looks only
 * at what instructions act on with an article, and says nothing where a word of it is known.
 */
final class ThingThatIsNoItem implements Check {
    @Override
    public About about() {
        return new About(
                "thing-that-is-no-item",
                Severity.HINT,
                "A step's text acts on a thing that is no item.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.wording().vocabulary().stream().flatMap(words -> examine(facts, words));
    }

    private Stream<Finding> examine(Facts facts, Vocabulary words) {
        KnownThings known = new KnownThings(facts.procedure(), words);
        return facts.procedure().steps().stream()
                .flatMap(
                        step ->
                                finding(
                                        facts,
                                        step,
                                        unknown(facts.wording().sentences(step), words, known)));
    }

    private static List<String> unknown(
            List<Sentence> sentences, Vocabulary words, KnownThings known) {
        return ThingsWithoutItem.in(sentences, words, known)
                .map(text -> "'" + text + "'")
                .distinct()
                .toList();
    }

    private Stream<Finding> finding(Facts facts, Step step, List<String> things) {
        if (things.isEmpty()) {
            return Stream.empty();
        }
        String message =
                "%s speaks of %s, which %s."
                        .formatted(
                                facts.phrases().step(step.id()),
                                Phrases.list(things),
                                things.size() == 1 ? "is no item" : "are no items");
        return Stream.of(about().finding(Phrases.sentence(message), List.of(step.id()), List.of()));
    }
}
