package counterstep.check;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.words.Sentence;
import counterstep.words.Vocabulary;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The texts of the steps as sentences, where the document's language has words. */
public final class Wording {
    private final Optional<Vocabulary> vocabulary;
    private final Map<StepId, List<Sentence>> texts = new HashMap<>();

    Wording(Procedure procedure) {
        vocabulary = Vocabulary.of(procedure.titleBlock().language());
        vocabulary.ifPresent(
                words ->
                        procedure
                                .steps()
                                .forEach(
                                        step ->
                                                texts.put(
                                                        step.id(), words.sentences(step.text()))));
    }

    /** The vocabulary to read the document with; empty where its language has none. */
    public Optional<Vocabulary> vocabulary() {
        return vocabulary;
    }

    /** The sentences of a step's text; none where they cannot be read. */
    public List<Sentence> sentences(Step step) {
        return texts.getOrDefault(step.id(), List.of());
    }
}
