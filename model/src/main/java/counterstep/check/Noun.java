package counterstep.check;

/**
 * What a sentence speaks of.
 *
 * @param text its words
 * @param plural whether its verb stands in the plural
 */
public record Noun(String text, boolean plural) {
    /** The words with a capital, to begin a sentence. */
    public String start() {
        return Phrases.sentence(text);
    }

    /** The one verb form or the other. */
    public String verb(String one, String many) {
        return plural ? many : one;
    }
}
