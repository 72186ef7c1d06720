package counterstep.check.wording;

import counterstep.check.Facts;
import counterstep.words.Vocabulary;
import java.util.Optional;

/** The language of the writer's text. */
final class Texts {
    private Texts() {}

    /** The vocabulary to read a document with; empty where its language has none. */
    static Optional<Vocabulary> vocabulary(Facts facts) {
        return Vocabulary.of(facts.procedure().titleBlock().language());
    }
}
