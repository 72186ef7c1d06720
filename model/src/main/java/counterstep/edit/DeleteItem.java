package counterstep.edit;

import counterstep.model.Callout;
import counterstep.model.Comment;
import counterstep.model.Hazard;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import counterstep.model.TitleBlock;
import java.util.List;
import java.util.Optional;

/**
 * Deletes an item and, with it, its actions and every mention of it: one undo brings all back.
 *
 * @param item which
 */
public record DeleteItem(ItemId item) implements Edit {
    @Override
    public String name() {
        return "Delete item";
    }

    @Override
    public Procedure apply(Procedure before) {
        before.item(item);
        WithoutItem without = new WithoutItem(item);
        return before.draft()
                .titleBlock(titleBlock(before.titleBlock()))
                .items(
                        before.items().stream()
                                .filter(kept -> !kept.id().equals(item))
                                .map(kept -> kept.match(without))
                                .toList())
                .steps(before.steps().stream().map(this::step).toList())
                .comments(before.comments().stream().map(this::comment).toList())
                .procedure();
    }

    private TitleBlock titleBlock(TitleBlock block) {
        return new TitleBlock(
                block.title(),
                block.device(),
                block.summary(),
                block.language(),
                block.skill(),
                block.conditions(),
                block.cautions().stream().map(this::hazard).toList());
    }

    private Step step(Step step) {
        return step.draft()
                .actions(
                        step.actions().stream()
                                .filter(action -> !action.item().equals(Optional.of(item)))
                                .toList())
                .hazards(step.hazards().stream().map(this::hazard).toList())
                .photos(step.photos().stream().map(this::photo).toList())
                .step();
    }

    private List<ItemId> left(List<ItemId> named) {
        return named.stream().filter(id -> !id.equals(item)).toList();
    }

    private Hazard hazard(Hazard hazard) {
        return new Hazard(
                hazard.signal(),
                hazard.hazard(),
                hazard.consequence(),
                hazard.avoidance(),
                left(hazard.items()),
                hazard.extras());
    }

    private StepPhoto photo(StepPhoto shown) {
        return new StepPhoto(
                shown.photo(),
                shown.callouts().stream().map(this::callout).toList(),
                shown.extras());
    }

    private Callout callout(Callout callout) {
        return new Callout(
                callout.number(),
                callout.shape(),
                callout.x(),
                callout.y(),
                callout.toX(),
                callout.toY(),
                callout.item().filter(id -> !id.equals(item)),
                callout.extras());
    }

    private Comment comment(Comment comment) {
        return new Comment(
                comment.id(),
                comment.steps(),
                left(comment.items()),
                comment.author(),
                comment.date(),
                comment.text(),
                comment.extras());
    }
}
