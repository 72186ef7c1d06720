package counterstep.words;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The name of a thing as a sentence has it.
 *
 * @param words its words, without article and number
 * @param verb the instruction that acts on it, or the number before it
 */
public record Thing(List<Token> words, Token verb) {
    /** Copies the list. */
    public Thing {
        words = List.copyOf(words);
    }

    /** Its words as written. */
    public String text() {
        return words.stream().map(Token::text).collect(Collectors.joining(" "));
    }

    /** The word that says what it is, the others say which: the last. */
    public Token head() {
        return words.get(words.size() - 1);
    }
}
