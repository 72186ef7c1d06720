package counterstep.words;

import counterstep.model.Action;
import java.util.List;

/**
 * One row of the phrase table.
 *
 * @param verb the verb it phrases
 * @param kind the kind of item it is for, or the form of fastener; empty for any
 * @param manner {@code finger-tight} or {@code aside}; empty for any
 * @param instruction the sentence, {@code {things}} where the things go
 * @param title the title, {@code {name}} where the name goes
 */
record Phrase(String verb, String kind, String manner, String instruction, String title) {
    static Phrase of(List<String> cells) {
        return new Phrase(cells.get(0), cells.get(1), cells.get(2), cells.get(3), cells.get(4));
    }

    boolean suits(Action action, List<String> kinds) {
        return verb.equals(action.verb().word())
                && (kind.isEmpty() || kinds.contains(kind))
                && (manner.isEmpty() || manner.equals(manner(action)));
    }

    private static String manner(Action action) {
        if (action.fingerTight()) {
            return "finger-tight";
        }
        return action.aside() ? "aside" : "";
    }
}
