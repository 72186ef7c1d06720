package counterstep.editor.photos;

import counterstep.edit.ChangePhoto;
import counterstep.edit.SetCallouts;
import counterstep.edit.ShowPhoto;
import counterstep.edit.TakeOffPhoto;
import counterstep.edit.TurnPhoto;
import counterstep.editor.desk.Desk;
import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.Item;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import java.util.List;
import java.util.Optional;

/** Which photo of which step is shown, and what can be done to it. */
final class ShownPhoto {
    private final Desk desk;
    private Optional<StepId> step = Optional.empty();
    private Optional<StepPhoto> chosen = Optional.empty();

    /** None of what lies on a desk. */
    ShownPhoto(Desk desk) {
        this.desk = desk;
    }

    /** Goes to a step; whether it is the one there was before. */
    boolean goTo(Optional<StepId> next) {
        boolean same = step.equals(next);
        step = next;
        return same;
    }

    /** Chooses one of its photos. */
    void choose(Optional<StepPhoto> next) {
        chosen = next;
    }

    private Procedure open() {
        return desk.state().procedure();
    }

    Optional<StepId> stepId() {
        return step;
    }

    Optional<Step> step() {
        return step.flatMap(
                id -> open().steps().stream().filter(each -> each.id().equals(id)).findFirst());
    }

    Optional<Photo> photo() {
        return chosen.flatMap(this::photo);
    }

    Optional<Photo> photo(StepPhoto of) {
        return open().photos().stream().filter(each -> each.id().equals(of.photo())).findFirst();
    }

    /** Its place among those of the step, from 0. */
    int place() {
        return chosen.flatMap(one -> step().map(in -> in.photos().indexOf(one))).orElse(0);
    }

    List<Callout> callouts() {
        return chosen.map(StepPhoto::callouts).orElse(List.of());
    }

    /** What the step acts on, each once. */
    List<Item> items() {
        return step().stream()
                .flatMap(in -> in.actions().stream())
                .map(Action::item)
                .flatMap(Optional::stream)
                .distinct()
                .map(open()::item)
                .toList();
    }

    void setCallouts(List<Callout> callouts, String name) {
        chosen.ifPresent(
                one ->
                        desk.apply(
                                new SetCallouts(step.orElseThrow(), one.photo(), callouts, name)));
    }

    void describe(String seenFrom, String alternative) {
        photo().ifPresent(
                        old ->
                                desk.apply(
                                        new ChangePhoto(
                                                new Photo(
                                                        old.id(),
                                                        old.file(),
                                                        alternative,
                                                        seenFrom,
                                                        old.quarterTurns(),
                                                        old.extras()),
                                                "Describe photo")));
    }

    void turn(int quarters) {
        photo().ifPresent(one -> desk.apply(new TurnPhoto(one.id(), quarters)));
    }

    void takeOff() {
        photo().ifPresent(one -> desk.apply(new TakeOffPhoto(one.id(), step.orElseThrow())));
    }

    void showIn(StepId other) {
        photo().ifPresent(one -> desk.apply(new ShowPhoto(one.id(), other)));
    }
}
