package counterstep.words;

/** What a word does in a sentence, as far as checks ask; each is a section of the data file. */
public enum WordClass {
    /** Before a thing: 'the', 'each', 'its'. */
    ARTICLE("articles"),
    /** Instead of a thing: 'it', 'them'. */
    PRONOUN("pronouns"),
    /** Between things or sentences: 'and', 'or'. */
    CONJUNCTION("conjunctions"),
    /** Before a second instruction: 'and', 'then'. */
    JOIN("joins"),
    /** Begins a clause before the instruction: 'if', 'when'. */
    OPENING("openings"),
    /** Begins a clause after the instruction: 'until', 'so'. */
    SUBORDINATOR("subordinators"),
    /** Says that two things happen at the same time: 'while'. */
    MEANWHILE("meanwhile"),
    /** Begins a prohibition: 'do not', 'never'. */
    NEGATION("negations"),
    /** Says where to or how, after the thing: 'out', 'straight'. */
    PARTICLE("particles"),
    /** Before another thing: 'of', 'under'. */
    PREPOSITION("prepositions"),
    /** A verb that makes a statement: 'is', 'must'. */
    FINITE("finite"),
    /** Says which one: 'left', 'new'. */
    QUALIFIER("qualifiers"),
    /** Begins an instruction: 'remove'. */
    COMMAND("commands"),
    /** Begins an instruction or names a thing: 'clamp'. */
    COMMAND_OR_NAME("commands or names"),
    /** An instruction that goes on while the next is done: 'hold'. */
    LASTING_COMMAND("commands that last"),
    /** An instruction to act on a thing of the device: 'loosen'. */
    HANDLING_COMMAND("commands that handle"),
    /** An instruction to move a thing: 'lay'. */
    MOVING_COMMAND("commands that move"),
    /** A part as devices have them: 'bracket'. */
    PART("parts"),
    /** A thing that is no item wherever it stands: 'bench', 'edge'. */
    GENERAL("general"),
    /** A full stop after it ends no sentence: 'approx'. */
    ABBREVIATION("abbreviations");

    private final String section;

    WordClass(String section) {
        this.section = section;
    }

    String section() {
        return section;
    }
}
