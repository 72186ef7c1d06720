package counterstep.edit;

import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.List;
import java.util.stream.Stream;

/**
 * Adds a photo to the document and shows it in a step, after those that it shows already. The step
 * keeps its standing: what is to be done is as it was.
 *
 * @param photo its id is one that the document never gave
 * @param step which shows it
 */
public record AddPhoto(Photo photo, StepId step) implements Edit {
    @Override
    public String name() {
        return "Add photo";
    }

    @Override
    public Procedure apply(Procedure before) {
        List<Photo> photos = Stream.concat(before.photos().stream(), Stream.of(photo)).toList();
        return new ShowPhoto(photo.id(), step).apply(before.draft().photos(photos).procedure());
    }
}
