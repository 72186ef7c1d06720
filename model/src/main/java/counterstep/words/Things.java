package counterstep.words;

import java.util.ArrayList;
import java.util.List;

/** Finds the names of things in a sentence: what instructions act on, and what is counted. */
public final class Things {
    private static final int LONGEST = 6;
    private static final int MOST_BEFORE_NAME = 3;

    private final List<Token> tokens;
    private final Vocabulary vocabulary;

    private Things(Sentence sentence, Vocabulary vocabulary) {
        this.tokens = sentence.tokens();
        this.vocabulary = vocabulary;
    }

    /** What the instructions of a sentence act on, named with an article: 'the left grip'. */
    public static List<Thing> actedOn(Sentence sentence, Vocabulary vocabulary) {
        Things reading = new Things(sentence, vocabulary);
        List<Thing> things = new ArrayList<>();
        for (Instruction instruction : Instructions.of(sentence, vocabulary)) {
            reading.actedOn(instruction.verb(), things);
        }
        return things;
    }

    /** What a sentence counts: 'two screws', 'one of the screws'; with the name after 'of'. */
    public static List<Thing> counted(Sentence sentence, Vocabulary vocabulary) {
        Things reading = new Things(sentence, vocabulary);
        List<Thing> things = new ArrayList<>();
        for (int at = 0; at < reading.tokens.size(); at++) {
            if (reading.counts(at)) {
                reading.counted(at, things);
            }
        }
        return things;
    }

    private boolean is(int at, WordClass kind) {
        return at >= 0 && at < tokens.size() && tokens.get(at).is(kind);
    }

    private boolean number(int at) {
        return at >= 0 && at < tokens.size() && tokens.get(at).number() >= 0;
    }

    private void actedOn(int verb, List<Thing> things) {
        int at = verb + 1;
        while (is(at, WordClass.PARTICLE) && !is(at, WordClass.ARTICLE)) {
            at++;
        }
        boolean joined = true;
        while (joined && is(at, WordClass.ARTICLE)) {
            List<Token> name = name(at + 1);
            if (name.isEmpty()) {
                return;
            }
            things.add(new Thing(name, tokens.get(verb)));
            at = after(at + 1, name);
            joined = is(at, WordClass.JOIN);
            at++;
        }
    }

    /** The place after a name that begins at a place; a number before it is stepped over. */
    private int after(int from, List<Token> name) {
        return from + skippedNumbers(from) + name.size();
    }

    private int skippedNumbers(int from) {
        int at = from;
        while (at < from + MOST_BEFORE_NAME && (number(at) || is(at, WordClass.ARTICLE))) {
            at++;
        }
        return at - from;
    }

    private List<Token> name(int from) {
        List<Token> name = new ArrayList<>();
        int at = from + skippedNumbers(from);
        while (at < tokens.size() && name.size() < LONGEST && continues(at, name.isEmpty())) {
            name.add(tokens.get(at));
            at++;
        }
        return name;
    }

    /** A word like 'back' belongs to the name before more of it, and ends it after the last. */
    private boolean continues(int at, boolean first) {
        Token token = tokens.get(at);
        if (!token.word() || stops(at) || number(at) && !first) {
            return false;
        }
        boolean moreFollows = at + 1 < tokens.size() && tokens.get(at + 1).word() && !stops(at + 1);
        boolean more = moreFollows && !vocabulary.manner(tokens.get(at + 1));
        return !vocabulary.manner(token) || more && (first || is(at, WordClass.QUALIFIER));
    }

    private boolean stops(int at) {
        return is(at, WordClass.ARTICLE)
                || is(at, WordClass.PRONOUN)
                || is(at, WordClass.CONJUNCTION)
                || is(at, WordClass.JOIN)
                || is(at, WordClass.SUBORDINATOR)
                || is(at, WordClass.FINITE)
                || is(at, WordClass.PREPOSITION) && !is(at, WordClass.QUALIFIER);
    }

    /**
     * Whether a number counts things: not a size, as in 'PH 2', 'M2 × 4', nor one end of a range.
     */
    private boolean counts(int at) {
        if (!number(at) || tokens.get(at).number() < (of(at + 1) ? 1 : 2)) {
            return false;
        }
        boolean range = number(at + 2) && is(at + 1, WordClass.CONJUNCTION);
        boolean rangeEnd = number(at - 2) && (stops(at - 1) && !of(at - 1));
        boolean figures = Character.isDigit(tokens.get(at).text().charAt(0));
        return !range && !rangeEnd && (!figures || at == 0 || leadsToNumber(at - 1));
    }

    private boolean leadsToNumber(int at) {
        boolean comma = tokens.get(at).mark(",") || tokens.get(at).mark(";");
        return comma
                || stops(at)
                || is(at, WordClass.COMMAND)
                || vocabulary.manner(tokens.get(at))
                || is(at, WordClass.QUALIFIER);
    }

    private boolean of(int at) {
        return is(at, WordClass.PREPOSITION) && tokens.get(at).lower().equals(vocabulary.partOf());
    }

    /** 'two screws', 'two of the six screws', 'two screws of the left grip'. */
    private void counted(int at, List<Thing> things) {
        int start = of(at + 1) ? at + 2 : at + 1;
        List<Token> name = new ArrayList<>(name(start));
        if (name.isEmpty()) {
            return;
        }
        int end = after(start, name);
        if (of(end)) {
            // The whole comes first, as in 'left grip screws', so that the head stays last.
            name.addAll(0, name(end + 1));
        }
        things.add(new Thing(name, tokens.get(at)));
    }
}
