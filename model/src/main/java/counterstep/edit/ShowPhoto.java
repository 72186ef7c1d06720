package counterstep.edit;

import counterstep.model.Extras;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import java.util.List;
import java.util.stream.Stream;

/**
 * Shows a photo of the document in a step, after those that it shows already and without callouts.
 *
 * @param photo which
 * @param step a step that does not show it yet; else nothing changes
 */
public record ShowPhoto(PhotoId photo, StepId step) implements Edit {
    @Override
    public String name() {
        return "Show photo in step";
    }

    @Override
    public Procedure apply(Procedure before) {
        Step old = before.step(step);
        if (old.photos().stream().anyMatch(shown -> shown.photo().equals(photo))) {
            return before;
        }
        StepPhoto shown = new StepPhoto(photo, List.of(), Extras.NONE);
        return before.withStep(
                old.draft()
                        .photos(Stream.concat(old.photos().stream(), Stream.of(shown)).toList())
                        .step());
    }
}
