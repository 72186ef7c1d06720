package counterstep.edit;

import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;

/**
 * Takes a photo off a step, its callouts with it. A photo that no other step shows leaves the
 * document; its file stays where it is.
 *
 * @param photo which
 * @param step from which step
 */
public record TakeOffPhoto(PhotoId photo, StepId step) implements Edit {
    @Override
    public String name() {
        return "Take photo off step";
    }

    @Override
    public Procedure apply(Procedure before) {
        Step old = before.step(step);
        Step without =
                old.draft()
                        .photos(
                                old.photos().stream()
                                        .filter(shown -> !shown.photo().equals(photo))
                                        .toList())
                        .step();
        Procedure after = before.withStep(without);
        boolean shownElsewhere =
                after.steps().stream()
                        .flatMap(each -> each.photos().stream())
                        .anyMatch(shown -> shown.photo().equals(photo));
        return shownElsewhere
                ? after
                : after.draft()
                        .photos(
                                after.photos().stream()
                                        .filter(each -> !each.id().equals(photo))
                                        .toList())
                        .procedure();
    }
}
