package counterstep.edit;

import counterstep.model.Callout;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import java.util.List;

/**
 * Sets the callouts of a photo in one step; other steps that show it keep theirs.
 *
 * @param step which
 * @param photo one that the step shows
 * @param callouts as they shall be
 * @param name what a person would call this change: 'Move callout'
 */
public record SetCallouts(StepId step, PhotoId photo, List<Callout> callouts, String name)
        implements Edit {
    /** Copies the list. */
    public SetCallouts {
        callouts = List.copyOf(callouts);
    }

    @Override
    public Procedure apply(Procedure before) {
        Step old = before.step(step);
        if (old.photos().stream().noneMatch(shown -> shown.photo().equals(photo))) {
            throw new IllegalArgumentException("step " + step + " shows no photo " + photo);
        }
        return before.withStep(
                old.draft().photos(old.photos().stream().map(this::numbered).toList()).step());
    }

    private StepPhoto numbered(StepPhoto shown) {
        return shown.photo().equals(photo) ? new StepPhoto(photo, callouts, shown.extras()) : shown;
    }
}
