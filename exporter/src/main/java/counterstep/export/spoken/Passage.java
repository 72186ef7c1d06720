package counterstep.export.spoken;

import java.util.List;

/**
 * Sentences that are said without a stop.
 *
 * @param notice whether it warns
 * @param sentences at least one
 */
record Passage(boolean notice, List<String> sentences) {
    /** Copies the list. */
    Passage {
        sentences = List.copyOf(sentences);
    }
}
