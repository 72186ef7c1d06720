package counterstep.words;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts text into sentences as ASD-STE100 counts them (second-hand): full stop, colon or dash ends
 * one, and text in brackets is one of its own.
 */
final class Sentences {
    private static final String ENDS = ".!?:–—-…";

    private final List<Sentence> sentences = new ArrayList<>();
    private final List<Token> outer = new ArrayList<>();
    private final List<Token> inBrackets = new ArrayList<>();
    private int depth;

    private Sentences() {}

    static List<Sentence> of(String commonMark, Vocabulary vocabulary) {
        Sentences cutting = new Sentences();
        Blocks.of(commonMark).forEach(block -> cutting.block(Tokens.of(block, vocabulary)));
        return cutting.sentences;
    }

    private void block(List<Token> tokens) {
        for (int at = 0; at < tokens.size(); at++) {
            Token token = tokens.get(at);
            if (token.mark("(")) {
                depth++;
            } else if (token.mark(")")) {
                depth = Math.max(0, depth - 1);
                if (depth == 0) {
                    end(inBrackets);
                }
            } else if (ends(tokens, at)) {
                end(depth > 0 ? inBrackets : outer);
            } else {
                (depth > 0 ? inBrackets : outer).add(token);
            }
        }
        depth = 0;
        end(inBrackets);
        end(outer);
    }

    private boolean ends(List<Token> tokens, int at) {
        Token token = tokens.get(at);
        if (token.word() || ENDS.indexOf(token.text().charAt(0)) < 0) {
            return false;
        }
        boolean shortened =
                token.mark(".") && at > 0 && tokens.get(at - 1).is(WordClass.ABBREVIATION);
        boolean begins =
                at + 1 == tokens.size()
                        || Character.isUpperCase(tokens.get(at + 1).text().codePointAt(0));
        return !shortened || begins;
    }

    private void end(List<Token> tokens) {
        if (tokens.stream().anyMatch(Token::word)) {
            sentences.add(new Sentence(tokens));
        }
        tokens.clear();
    }
}
