package counterstep.words;

/**
 * An instruction inside a sentence.
 *
 * @param verb place of its verb among the tokens of the sentence
 * @param after place of the last token of what it follows; -1 for the first
 */
public record Instruction(int verb, int after) {}
