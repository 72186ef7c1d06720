package counterstep.edit;

import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.Hazard;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.PhotoId;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import counterstep.model.SupplyId;
import counterstep.model.SupplyUse;
import counterstep.model.ToolId;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * What things are called elsewhere: in another document, or in the same one when some of them are
 * gone. A mention of an item that has no id there is left out, and an action on it goes with it.
 *
 * @param items the id of an item there; empty if it is not there
 * @param tools the id of a tool there
 * @param supplies the id of a supply there
 * @param photos the id of a photo there
 */
public record OtherIds(
        Function<ItemId, Optional<ItemId>> items,
        UnaryOperator<ToolId> tools,
        UnaryOperator<SupplyId> supplies,
        UnaryOperator<PhotoId> photos) {

    /** All as it is called here, without the items that are not kept. */
    public static OtherIds keeping(Predicate<ItemId> kept) {
        return new OtherIds(
                id -> Optional.of(id).filter(kept),
                UnaryOperator.identity(),
                UnaryOperator.identity(),
                UnaryOperator.identity());
    }

    /** Items by their ids there, without those that are not there. */
    public List<ItemId> items(List<ItemId> named) {
        return named.stream().flatMap(id -> items.apply(id).stream()).toList();
    }

    /** An item under an id, with what it says of others. */
    public Item item(Item item, ItemId id) {
        return item.match(new ItemElsewhere(id, this));
    }

    /** A step under an id; its place and its standing stay. */
    public Step step(Step step, StepId id) {
        return new StepDraft(id, step.phase(), step.title())
                .text(step.text())
                .actions(step.actions().stream().flatMap(each -> action(each).stream()).toList())
                .tool(step.tool().map(tools))
                .seconds(step.seconds())
                .timeSource(step.timeSource())
                .timeRange(step.timeRange())
                .secondPerson(step.secondPerson())
                .safeToPause(step.safeToPause())
                .standing(step.standing())
                .hazards(step.hazards().stream().map(this::hazard).toList())
                .photos(step.photos().stream().map(this::photo).toList())
                .spoken(step.spoken())
                .place(step.place())
                .extras(step.extras())
                .step();
    }

    private Optional<Action> action(Action action) {
        Optional<ItemId> item = action.item().flatMap(items);
        if (item.isEmpty() && action.item().isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                action.draft()
                        .item(item)
                        .tool(action.tool().map(tools))
                        .supplies(action.supplies().stream().map(this::supply).toList())
                        .action());
    }

    private SupplyUse supply(SupplyUse use) {
        return new SupplyUse(supplies.apply(use.supply()), use.amount(), use.extras());
    }

    /** A hazard with the items it speaks of. */
    public Hazard hazard(Hazard hazard) {
        return new Hazard(
                hazard.signal(),
                hazard.hazard(),
                hazard.consequence(),
                hazard.avoidance(),
                items(hazard.items()),
                hazard.extras());
    }

    private StepPhoto photo(StepPhoto shown) {
        return new StepPhoto(
                photos.apply(shown.photo()),
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
                callout.item().flatMap(items),
                callout.extras());
    }
}
