package counterstep.export;

/**
 * What whoever exports has chosen for all formats.
 *
 * @param paper what sheets and PDF are laid out for
 * @param rate how fast a narration is spoken
 * @param photoWidth the longer side of a photo at most, in pixels; none is scaled up
 */
public record Choices(Paper paper, SpeechRate rate, int photoWidth) {
    /** Narrower than this nothing can be seen on a photo. */
    public static final int NARROWEST = 120;

    /** Wider than this no paper shows more. */
    public static final int WIDEST = 4096;

    /** What is taken where nothing is chosen. */
    public static final Choices USUAL = new Choices(Paper.A4, SpeechRate.USUAL, 1200);

    /**
     * Refuses a width out of bounds.
     *
     * @throws IllegalArgumentException if photos would be too small or too large
     */
    public Choices {
        if (photoWidth < NARROWEST || photoWidth > WIDEST) {
            throw new IllegalArgumentException(
                    "photos %d pixels wide; from %d to %d can be used"
                            .formatted(photoWidth, NARROWEST, WIDEST));
        }
    }

    /** The same on another paper. */
    public Choices on(Paper other) {
        return new Choices(other, rate, photoWidth);
    }

    /** The same, spoken at another rate. */
    public Choices at(SpeechRate other) {
        return new Choices(paper, other, photoWidth);
    }
}
