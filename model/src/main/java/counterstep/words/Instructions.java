package counterstep.words;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the instructions of a sentence: the verb it begins with, after an opening clause if there
 * is one, and those that 'and', 'then' or a comma join to it. What is done at the same time is one
 * instruction (ASD-STE100 5.2, second-hand): 'press and hold', 'hold the nut and turn the screw'.
 */
public final class Instructions {
    private final List<Token> tokens;
    private final Vocabulary vocabulary;
    private final List<Instruction> found = new ArrayList<>();

    private Instructions(Sentence sentence, Vocabulary vocabulary) {
        this.tokens = sentence.tokens();
        this.vocabulary = vocabulary;
    }

    /** The instructions in order; none where the sentence makes a statement or forbids. */
    public static List<Instruction> of(Sentence sentence, Vocabulary vocabulary) {
        Instructions reading = new Instructions(sentence, vocabulary);
        int first = reading.first();
        if (first >= 0) {
            reading.found.add(new Instruction(first, -1));
            if (sentence.tokens().stream().noneMatch(one -> one.is(WordClass.MEANWHILE))) {
                reading.others(first);
            }
        }
        return reading.found;
    }

    private boolean is(int at, WordClass kind) {
        return at < tokens.size() && tokens.get(at).is(kind);
    }

    /** The place of the first instruction; -1 where there is none. */
    private int first() {
        int at = skipped(0);
        if (is(at, WordClass.OPENING)) {
            while (at < tokens.size() && !tokens.get(at).mark(",")) {
                at++;
            }
            at = skipped(at);
        }
        boolean statement = is(at + 1, WordClass.FINITE);
        return is(at, WordClass.COMMAND) && !is(at, WordClass.NEGATION) && !statement ? at : -1;
    }

    /** Goes over marks and words that say when or how: 'Then, carefully, ...'. */
    private int skipped(int from) {
        int at = from;
        while (at < tokens.size() && (!tokens.get(at).word() || leads(at))) {
            at++;
        }
        return at;
    }

    private boolean leads(int at) {
        boolean says = is(at, WordClass.JOIN) || vocabulary.manner(tokens.get(at));
        return says && !is(at, WordClass.COMMAND);
    }

    private void others(int first) {
        int verb = first;
        boolean clause = false;
        for (int at = first + 1; at < tokens.size(); at++) {
            clause = !tokens.get(at).mark(",") && (clause || beginsClause(at));
            int next = afterJoin(at);
            if (next > at && commands(next)) {
                if (follows(verb, at, next, clause)) {
                    found.add(new Instruction(next, at - 1));
                }
                verb = next;
                clause = false;
            }
            at = Math.max(at, next - 1);
        }
    }

    /** 'until it clicks'; 'to' and the like only before a verb: 'to seat it'. */
    private boolean beginsClause(int at) {
        return is(at, WordClass.SUBORDINATOR)
                && (!is(at, WordClass.PREPOSITION) || is(at + 1, WordClass.COMMAND));
    }

    /**
     * The place after a comma, 'and', 'then' and such; the place itself where none of it stands.
     */
    private int afterJoin(int from) {
        boolean joins = joinMark(from) || is(from, WordClass.JOIN);
        int at = from;
        while (joins && at < tokens.size() && (joinMark(at) || leads(at))) {
            at++;
        }
        return at;
    }

    private boolean joinMark(int at) {
        return tokens.get(at).mark(",") || tokens.get(at).mark(";");
    }

    /** A verb that could be a name as well must have its thing after it. */
    private boolean commands(int at) {
        if (!is(at, WordClass.COMMAND) || is(at + 1, WordClass.FINITE)) {
            return false;
        }
        int thing = at + 1;
        while (thing < tokens.size() && is(thing, WordClass.PARTICLE)) {
            thing++;
        }
        return !is(at, WordClass.COMMAND_OR_NAME) || beginsThing(thing);
    }

    private boolean beginsThing(int at) {
        return is(at, WordClass.ARTICLE)
                || is(at, WordClass.PRONOUN)
                || at < tokens.size() && tokens.get(at).number() >= 0;
    }

    /** Whether the second is done after the first rather than with it. */
    private boolean follows(int verb, int join, int next, boolean clause) {
        boolean inTurn = false;
        for (int at = join; at < next; at++) {
            inTurn |= joinMark(at);
            inTurn |= is(at, WordClass.JOIN) && !is(at, WordClass.CONJUNCTION);
        }
        boolean together = clause || is(verb, WordClass.LASTING_COMMAND) || adjacent(verb, join);
        return inTurn || !together;
    }

    private boolean adjacent(int verb, int join) {
        for (int at = verb + 1; at < join; at++) {
            if (!vocabulary.manner(tokens.get(at))) {
                return false;
            }
        }
        return true;
    }
}
