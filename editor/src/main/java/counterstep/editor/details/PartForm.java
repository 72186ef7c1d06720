package counterstep.editor.details;

import counterstep.editor.form.Form;
import counterstep.editor.form.PickInput;
import counterstep.editor.form.TextInput;
import counterstep.editor.form.TickInput;
import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Tie;
import java.util.List;

/** The fields of a part. */
final class PartForm extends ItemForm<Part> {
    private final ItemNames names = new ItemNames();
    private final TextInput number;
    private final TickInput renewed;
    private final TickInput staticSensitive;
    private final PickInput<ItemId> heldBy;
    private final PickInput<ItemId> looseIsEnough;
    private final PickInput<ItemId> tetheredBy;
    private final PickInput<ItemId> covers;

    PartForm(Part first, Runnable changed) {
        super(first, changed);
        number = new TextInput("Part number", changed);
        renewed = new TickInput("renewed by this service", changed);
        staticSensitive = new TickInput("sensitive to static", changed);
        heldBy = names.pick("Held by", changed).named("item.heldBy");
        looseIsEnough = names.pick("Of these, loose is enough", changed);
        tetheredBy = names.pick("Tethered by", changed);
        covers = names.pick("Covers", changed);
    }

    @Override
    void lay(Form target) {
        target.add(number, quantity)
                .add(renewed)
                .add(staticSensitive)
                .add(heldBy)
                .add(looseIsEnough)
                .add(tetheredBy)
                .add(covers);
    }

    @Override
    void fill(Part part, Procedure procedure) {
        heldBy.offer(
                names.those(
                        procedure,
                        item ->
                                item instanceof FastenerSet
                                        || item instanceof ClipSet
                                        || item instanceof Tie
                                        || item instanceof Joint));
        tetheredBy.offer(names.those(procedure, Connector.class::isInstance));
        covers.offer(names.those(procedure, item -> !item.id().equals(part.id())));
        List<ItemId> holders = part.heldBy().stream().map(Hold::holder).toList();
        looseIsEnough.offer(holders);
        number.show(part.number());
        renewed.show(part.renewed());
        staticSensitive.show(part.staticSensitive());
        heldBy.show(holders);
        looseIsEnough.show(
                part.heldBy().stream().filter(Hold::looseIsEnough).map(Hold::holder).toList());
        tetheredBy.show(part.tetheredBy());
        covers.show(part.covers());
    }

    @Override
    Part read() {
        return new Part(
                shown().id(),
                name.value(),
                number.value(),
                quantity.value(),
                renewed.value(),
                staticSensitive.value(),
                heldBy.value().stream().map(this::hold).toList(),
                tetheredBy.value(),
                covers.value(),
                note.value(),
                shown().extras());
    }

    private Hold hold(ItemId holder) {
        Extras extras =
                shown().heldBy().stream()
                        .filter(hold -> hold.holder().equals(holder))
                        .findFirst()
                        .map(Hold::extras)
                        .orElse(Extras.NONE);
        return new Hold(holder, looseIsEnough.value().contains(holder), extras);
    }
}
