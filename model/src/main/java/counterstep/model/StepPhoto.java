package counterstep.model;

import java.util.List;

/**
 * A photo as one step shows it.
 *
 * @param photo which
 * @param callouts its numbers in this step
 * @param extras unknown fields
 */
public record StepPhoto(PhotoId photo, List<Callout> callouts, Extras extras) {
    /** Copies the list. */
    public StepPhoto {
        callouts = List.copyOf(callouts);
    }
}
