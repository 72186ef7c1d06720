package counterstep.words;

import java.util.Set;

/**
 * A word or a mark of a text.
 *
 * @param text as the reader sees it
 * @param lower in small letters, to look it up
 * @param kind word, mark or name
 * @param start where it begins in the text as it was written, marks of CommonMark counted
 * @param end where it ends there
 * @param classes what the word may do in a sentence
 * @param number the whole number it stands for; -1 where it is none
 */
public record Token(
        String text,
        String lower,
        Kind kind,
        int start,
        int end,
        Set<WordClass> classes,
        int number) {
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

    /** Whether it may be a word of a class. */
    public boolean is(WordClass wordClass) {
        return classes.contains(wordClass);
    }

    /** Whether it is this mark. */
    public boolean mark(String mark) {
        return kind == Kind.MARK && text.equals(mark);
    }

    /** Whether it is a label rather than a word of the language: 'J4', 'USB', code. */
    public boolean label() {
        boolean capitals = text.length() > 1 && text.chars().noneMatch(Character::isLowerCase);
        boolean figures = text.chars().anyMatch(Character::isDigit);
        return kind == Kind.NAME || capitals || figures;
    }
}
