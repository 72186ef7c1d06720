package counterstep.model;

import java.util.regex.Pattern;

/**
 * A photo beside the document, shown by one step or several.
 *
 * @param id its id
 * @param file its file name in the photo folder: a plain name, no path
 * @param alternative what it shows, in words, for those who cannot see it; may be empty
 * @param seenFrom 'the back'; may be empty
 * @param quarterTurns clockwise turns by 90 degrees before it is shown, 0 to 3; a photo that its
 *     camera noted as mirrored is put right first
 * @param extras unknown fields
 */
public record Photo(
        PhotoId id,
        String file,
        String alternative,
        String seenFrom,
        int quarterTurns,
        Extras extras) {
    private static final Pattern PLAIN_NAME =
            Pattern.compile("[\\p{L}\\p{N}_][\\p{L}\\p{N}_ .-]{0,199}");

    /** Refuses a file name that could leave the photo folder, and other turns. */
    public Photo {
        if (!PLAIN_NAME.matcher(file).matches()) {
            throw new IllegalArgumentException("no plain file name: '" + file + "'");
        }
        if (quarterTurns < 0 || quarterTurns > 3) {
            throw new IllegalArgumentException("quarter turns of " + quarterTurns);
        }
    }
}
