package counterstep.export;

import counterstep.handbook.SpeakingRates;

/**
 * How fast a narration is spoken.
 *
 * @param wordsPerMinute from 60, as one dictates, to 300, as one reads silently
 */
public record SpeechRate(int wordsPerMinute) {
    /** The rate where nothing else is asked for. */
    public static final SpeechRate USUAL = new SpeechRate(SpeakingRates.usual());

    private static final int SLOWEST = 60;
    private static final int FASTEST = 300;
    private static final int MILLISECONDS = 60_000;

    /**
     * Refuses what nobody speaks.
     *
     * @throws IllegalArgumentException if it lies outside of the bounds
     */
    public SpeechRate {
        if (wordsPerMinute < SLOWEST || wordsPerMinute > FASTEST) {
            throw new IllegalArgumentException(
                    "%d words per minute; from %d to %d are spoken"
                            .formatted(wordsPerMinute, SLOWEST, FASTEST));
        }
    }

    /** How long so many words take, in whole milliseconds. */
    public long milliseconds(long words) {
        return Math.round((double) words * MILLISECONDS / wordsPerMinute);
    }

    /** The same in whole seconds, rounded. */
    public long seconds(long words) {
        return Math.round(milliseconds(words) / 1000.0);
    }
}
