package counterstep.export.guide;

import counterstep.export.picture.Picture;
import counterstep.model.Callout;
import java.util.List;

/**
 * A photo of a step.
 *
 * @param picture the photo, or why it cannot be shown
 * @param file its file name, which names the empty frame
 * @param alternative what it shows, in words; never empty
 * @param seenFrom 'the back'; may be empty
 * @param callouts the numbers on it
 */
public record PhotoBlock(
        Picture picture, String file, String alternative, String seenFrom, List<Callout> callouts) {
    /** Copies the list. */
    public PhotoBlock {
        callouts = List.copyOf(callouts);
    }
}
