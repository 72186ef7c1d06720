package counterstep.excerpt;

import counterstep.edit.FreshIds;
import counterstep.edit.OtherIds;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Supply;
import counterstep.model.SupplyId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What each thing of an excerpt is called in the document it comes into, and what is new there. */
record Arrival(
        Meeting<Item, ItemId> itemsMet,
        Meeting<Tool, ToolId> toolsMet,
        Meeting<Supply, SupplyId> suppliesMet,
        Meeting<Photo, PhotoId> photosMet,
        Map<StepId, StepId> steps) {

    static Arrival of(Procedure excerpt, Procedure into) {
        FreshIds fresh = FreshIds.after(into);
        Map<StepId, StepId> steps = new LinkedHashMap<>();
        for (Step step : excerpt.steps()) {
            steps.put(step.id(), fresh.step());
        }
        return new Arrival(
                Meeting.of(
                        excerpt.items(), into.items(), Item::id, Arrival::isSameItem, fresh::item),
                Meeting.of(
                        excerpt.tools(),
                        into.tools(),
                        Tool::id,
                        (one, other) -> isSameName(one.name(), other.name()),
                        tool -> fresh.tool()),
                Meeting.of(
                        excerpt.supplies(),
                        into.supplies(),
                        Supply::id,
                        (one, other) -> isSameName(one.name(), other.name()),
                        supply -> fresh.supply()),
                Meeting.of(
                        excerpt.photos(),
                        into.photos(),
                        Photo::id,
                        (one, other) -> one.file().equals(other.file()),
                        photo -> fresh.photo()),
                steps);
    }

    private static boolean isSameItem(Item one, Item other) {
        return one.getClass() == other.getClass() && isSameName(one.name(), other.name());
    }

    private static boolean isSameName(String one, String other) {
        return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }

    OtherIds ids() {
        return new OtherIds(
                id -> Optional.ofNullable(itemsMet.idOf(id)),
                toolsMet::idOf,
                suppliesMet::idOf,
                photosMet::idOf);
    }

    List<Item> items() {
        OtherIds ids = ids();
        return itemsMet.strangers().stream()
                .map(item -> ids.item(item, itemsMet.idOf(item.id())))
                .toList();
    }

    List<Tool> tools() {
        return toolsMet.strangers().stream()
                .map(
                        tool ->
                                new Tool(
                                        toolsMet.idOf(tool.id()),
                                        tool.name(),
                                        tool.kind(),
                                        tool.drive(),
                                        tool.inHand(),
                                        tool.note(),
                                        tool.extras()))
                .toList();
    }

    List<Supply> supplies() {
        return suppliesMet.strangers().stream()
                .map(
                        supply ->
                                new Supply(
                                        suppliesMet.idOf(supply.id()),
                                        supply.name(),
                                        supply.amount(),
                                        supply.note(),
                                        supply.extras()))
                .toList();
    }

    List<Photo> photos() {
        return photosMet.strangers().stream()
                .map(
                        photo ->
                                new Photo(
                                        photosMet.idOf(photo.id()),
                                        photo.file(),
                                        photo.alternative(),
                                        photo.seenFrom(),
                                        photo.quarterTurns(),
                                        photo.extras()))
                .toList();
    }
}
