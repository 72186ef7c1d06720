package counterstep.check.wording;

import counterstep.check.Phrases;
import counterstep.words.Token;
import java.util.Optional;

/** A text with some words changed, in the order in which they stand; all else stays as written. */
final class Rewriting {
    private final String before;
    private final StringBuilder after = new StringBuilder();
    private int copied;
    private boolean plain = true;

    Rewriting(String before) {
        this.before = before;
    }

    /** Writes another word, with a capital where the old one has it. */
    void exchange(Token old, String word) {
        plain &= before.substring(old.start(), old.end()).equals(old.text());
        boolean capital = Character.isUpperCase(old.text().codePointAt(0));
        replace(old.start(), old.end(), capital ? Phrases.sentence(word) : word);
    }

    /** Ends the sentence after one word and begins the next with another. */
    void begin(Token last, Token first) {
        String between = before.substring(last.end(), first.start());
        plain &= between.chars().allMatch(Rewriting::plain);
        plain &= before.substring(first.start(), first.end()).equals(first.text());
        replace(last.end(), first.end(), ". " + Phrases.sentence(first.text()));
    }

    private static boolean plain(int letter) {
        return Character.isLetter(letter) || Character.isWhitespace(letter) || letter == ',';
    }

    private void replace(int from, int to, String words) {
        after.append(before, copied, from).append(words);
        copied = to;
    }

    /** The text; empty where marks of CommonMark stand in the way. */
    Optional<String> result() {
        return plain ? Optional.of(after + before.substring(copied)) : Optional.empty();
    }
}
