package counterstep.shorthand;

import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The text of a step, written from what it does until the writer says it better. */
final class StepSentences {
    private final Vocabulary vocabulary;
    private final List<String> sentences = new ArrayList<>();
    private boolean acts;

    StepSentences(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** An action; on no item it is said as typed. */
    void add(Understood one, String typed) {
        acts = true;
        if (one.item().isEmpty()) {
            sentences.add(sentence(typed));
            return;
        }
        String told = vocabulary.phrasing().instruction(one.action(), one.item());
        String how = one.action().remark();
        sentences.add(how.isEmpty() ? told : sentence(told.replaceAll("\\.$", "") + " " + how));
    }

    /** Words that are no action. */
    void add(String words) {
        sentences.add(sentence(words));
    }

    /**
     * All of it; empty where the title says it already.
     *
     * @param titled whether the title says something else
     */
    String text(boolean titled) {
        return acts || titled ? String.join(" ", sentences) : "";
    }

    /** Words with a capital and a full stop; nothing stays nothing. */
    static String sentence(String words) {
        boolean ends = words.isEmpty() || ".!?".indexOf(words.charAt(words.length() - 1)) >= 0;
        return capital(words) + (ends ? "" : ".");
    }

    static String capital(String words) {
        int first = words.isEmpty() ? 0 : Character.charCount(words.codePointAt(0));
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }
}
