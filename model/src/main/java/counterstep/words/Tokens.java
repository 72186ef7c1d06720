package counterstep.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Cuts a block of prose into words and marks. */
final class Tokens {
    private final Prose prose;
    private final Vocabulary vocabulary;
    private final List<Token> tokens = new ArrayList<>();

    private Tokens(Prose prose, Vocabulary vocabulary) {
        this.prose = prose;
        this.vocabulary = vocabulary;
    }

    static List<Token> of(Prose prose, Vocabulary vocabulary) {
        Tokens cutting = new Tokens(prose, vocabulary);
        int at = 0;
        while (at < prose.length()) {
            at = cutting.next(at);
        }
        return cutting.tokens;
    }

    private int next(int at) {
        char letter = prose.at(at);
        if (prose.code(at)) {
            int end = at;
            while (end < prose.length() && prose.code(end)) {
                end++;
            }
            return add(Token.Kind.NAME, at, end);
        }
        if (Character.isWhitespace(letter) || Character.isSpaceChar(letter)) {
            return at + 1;
        }
        if (!inWord(at)) {
            return add(Token.Kind.MARK, at, at + 1);
        }
        int end = at + 1;
        while (end < prose.length() && (inWord(end) || joins(end))) {
            end++;
        }
        return add(Token.Kind.WORD, at, end);
    }

    private int add(Token.Kind kind, int from, int to) {
        String text = prose.words(from, to);
        String lower = text.toLowerCase(Locale.ROOT);
        boolean word = kind == Token.Kind.WORD;
        tokens.add(
                new Token(
                        text,
                        lower,
                        kind,
                        prose.origin(from),
                        prose.origin(to - 1) + 1,
                        word ? vocabulary.classes(lower) : Set.of(),
                        word ? vocabulary.numbers().value(lower).orElse(-1) : -1));
        return to;
    }

    private boolean inWord(int at) {
        if (at >= prose.length() || prose.code(at)) {
            return false;
        }
        char letter = prose.at(at);
        if (letter >= 'a' && letter <= 'z') {
            return true;
        }
        return Character.isLetterOrDigit(letter)
                || Character.isSurrogate(letter)
                || Character.getType(letter) == Character.NON_SPACING_MARK
                || "_%°".indexOf(letter) >= 0;
    }

    /** Whether a mark between two letters belongs to their word: don't, T5-size, 2.5, on/off. */
    private boolean joins(int at) {
        if (!inWord(at - 1) || !inWord(at + 1)) {
            return false;
        }
        boolean figures =
                Character.isDigit(prose.at(at - 1)) && Character.isDigit(prose.at(at + 1));
        return switch (prose.at(at)) {
            case '\'', '’', '-', '\u2011', '/', '@' -> true;
            case ',', ':' -> figures;
            case '.' -> figures || !Character.isUpperCase(prose.at(at + 1));
            default -> false;
        };
    }
}
