package counterstep.edit;

import counterstep.model.Comment;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.TitleBlock;

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
        OtherIds without = OtherIds.keeping(id -> !id.equals(item));
        return before.draft()
                .titleBlock(titleBlock(before.titleBlock(), without))
                .items(
                        before.items().stream()
                                .filter(kept -> !kept.id().equals(item))
                                .map(kept -> without.item(kept, kept.id()))
                                .toList())
                .steps(before.steps().stream().map(step -> without.step(step, step.id())).toList())
                .comments(
                        before.comments().stream()
                                .map(comment -> comment(comment, without))
                                .toList())
                .procedure();
    }

    private static TitleBlock titleBlock(TitleBlock block, OtherIds without) {
        return new TitleBlock(
                block.title(),
                block.device(),
                block.summary(),
                block.language(),
                block.skill(),
                block.conditions(),
                block.cautions().stream().map(without::hazard).toList());
    }

    private static Comment comment(Comment comment, OtherIds without) {
        return new Comment(
                comment.id(),
                comment.steps(),
                without.items(comment.items()),
                comment.author(),
                comment.date(),
                comment.text(),
                comment.extras());
    }
}
