package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.words.Sentence;
import java.util.List;
import java.util.stream.Stream;

/** An instruction has 20 words at most (ASD-STE100 rule 5.1, second-hand). */
final class SentenceTooLong implements Check {
    private static final int MOST = 20;
    private static final int QUOTED = 5;

    @Override
    public About about() {
        return new About(
                "sentence-too-long", Severity.HINT, "A sentence of a step has over 20 words.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().steps().stream()
                .flatMap(step -> finding(facts, step, tooLong(facts.wording().sentences(step))));
    }

    private static List<Sentence> tooLong(List<Sentence> sentences) {
        return sentences.stream().filter(sentence -> sentence.length() > MOST).toList();
    }

    private Stream<Finding> finding(Facts facts, Step step, List<Sentence> tooLong) {
        if (tooLong.isEmpty()) {
            return Stream.empty();
        }
        Sentence first = tooLong.get(0);
        String message =
                "In %s, '%s' has %d words; an instruction has at most %d."
                        .formatted(
                                facts.phrases().step(step.id()),
                                first.beginning(QUOTED),
                                first.length(),
                                MOST);
        return Stream.of(about().finding(Phrases.sentence(message), List.of(step.id()), List.of()));
    }
}
