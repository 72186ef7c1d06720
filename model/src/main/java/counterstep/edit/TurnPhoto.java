package counterstep.edit;

import counterstep.model.Callout;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import java.util.List;

/**
 * Turns a photo by quarters; its callouts in every step stay on what they point at.
 *
 * @param photo which
 * @param quarters clockwise, negative for the other way
 */
public record TurnPhoto(PhotoId photo, int quarters) implements Edit {
    @Override
    public String name() {
        return "Turn photo";
    }

    @Override
    public Procedure apply(Procedure before) {
        if (before.photos().stream().noneMatch(each -> each.id().equals(photo))) {
            throw new IllegalArgumentException("no such id: " + photo);
        }
        return before.draft()
                .photos(before.photos().stream().map(this::turned).toList())
                .steps(before.steps().stream().map(this::turned).toList())
                .procedure();
    }

    private Photo turned(Photo old) {
        return old.id().equals(photo)
                ? new Photo(
                        old.id(),
                        old.file(),
                        old.alternative(),
                        old.seenFrom(),
                        Math.floorMod(old.quarterTurns() + quarters, 4),
                        old.extras())
                : old;
    }

    private Step turned(Step old) {
        if (old.photos().stream().noneMatch(shown -> shown.photo().equals(photo))) {
            return old;
        }
        return old.draft().photos(old.photos().stream().map(this::turned).toList()).step();
    }

    private StepPhoto turned(StepPhoto shown) {
        if (!shown.photo().equals(photo)) {
            return shown;
        }
        List<Callout> callouts = shown.callouts();
        for (int turn = 0; turn < Math.floorMod(quarters, 4); turn++) {
            callouts = callouts.stream().map(TurnPhoto::turnedOnce).toList();
        }
        return new StepPhoto(photo, callouts, shown.extras());
    }

    private static Callout turnedOnce(Callout callout) {
        return new Callout(
                callout.number(),
                callout.shape(),
                1 - callout.y(),
                callout.x(),
                1 - callout.toY(),
                callout.toX(),
                callout.item(),
                callout.extras());
    }
}
