package counterstep.words;

import java.util.List;

/**
 * One sentence.
 *
 * @param tokens its words and marks, in order
 */
public record Sentence(List<Token> tokens) {
    /** Copies the list. */
    public Sentence {
        tokens = List.copyOf(tokens);
    }

    /**
     * How many words: a number, an identifier, a hyphenated group is one (ASD-STE100 8.x,
     * second-hand).
     */
    public int length() {
        return (int) tokens.stream().filter(Token::word).count();
    }

    /** Its first words, to quote it. */
    public String beginning(int words) {
        StringBuilder quoted = new StringBuilder();
        int left = words;
        for (Token token : tokens) {
            if (token.word() && left-- == 0) {
                return quoted + " ...";
            }
            boolean closes = !token.word() && ",;.".contains(token.text());
            boolean apart = !quoted.isEmpty() && !closes;
            quoted.append(apart ? " " : "").append(token.text());
        }
        return quoted.toString();
    }
}
