package counterstep.words;

import java.util.Locale;

/**
 * A word or a mark of a text.
 *
 * @param text as the reader sees it
 * @param kind word, mark or name
 * @param start where it begins in the text as it was written, marks of CommonMark counted
 * @param end where it ends there
 */
public record Token(String text, Kind kind, int start, int end) {
    /** What a token is. */
    public enum Kind {
        /** A word, a number, or both in one. */
        WORD,
        /** A comma, a bracket, a dash. */
        MARK,
        /** Set as code: a label or a key, whatever it contains. */
        NAME
    }

    /** Whether it counts as a word. */
    public boolean word() {
        return kind != Kind.MARK;
    }

    /** In small letters, to look it up. */
    public String lower() {
        return text.toLowerCase(Locale.ROOT);
    }

    /** Whether it is this mark. */
    public boolean mark(String mark) {
        return kind == Kind.MARK && text.equals(mark);
    }

    /** Whether it is a label rather than a word of the language: 'J4', 'USB', code. */
    public boolean label() {
        boolean capitals = text.length() > 1 && text.equals(text.toUpperCase(Locale.ROOT));
        boolean figures = text.chars().anyMatch(Character::isDigit);
        return kind == Kind.NAME || capitals || figures;
    }
}
