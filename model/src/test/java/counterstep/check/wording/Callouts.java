package counterstep.check.wording;

import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.StepPhoto;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A photo with callouts for a test. */
final class Callouts {
    private Callouts() {}

    /** The first step shows a photo with callouts 1, 2 ... on items; '' is a callout on none. */
    static Procedure on(Procedure procedure, String... items) {
        List<Callout> callouts = new ArrayList<>();
        for (String item : items) {
            Optional<ItemId> on = item.isEmpty() ? Optional.empty() : Optional.of(new ItemId(item));
            int number = callouts.size() + 1;
            callouts.add(
                    new Callout(number, CalloutShape.POINT, 0.1, 0.1, 0.1, 0.1, on, Extras.NONE));
        }
        PhotoId id = new PhotoId("h1");
        Photo photo = new Photo(id, "lid.png", "The lid.", "", 0, Extras.NONE);
        StepPhoto shown = new StepPhoto(id, callouts, Extras.NONE);
        Procedure with = procedure.draft().photos(List.of(photo)).procedure();
        return with.withStep(with.steps().get(0).draft().photos(List.of(shown)).step());
    }
}
