package counterstep.shorthand;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Tie;
import java.util.ArrayList;
import java.util.List;

/** What is told of a part: what holds, tethers and hides, and whether it is renewed. */
final class PartFacts implements FactsOf {
    private final Part part;
    private final Named named;
    private final List<Hold> holds;
    private final List<ItemId> tethers;
    private final List<ItemId> covered;
    private String number;
    private boolean renewed;
    private boolean sensitive;

    PartFacts(Part part, Named named) {
        this.part = part;
        this.named = named;
        holds = new ArrayList<>(part.heldBy());
        tethers = new ArrayList<>(part.tetheredBy());
        covered = new ArrayList<>(part.covers());
        number = part.number();
        renewed = part.renewed();
        sensitive = part.staticSensitive();
    }

    @Override
    public boolean take(FactWords said) {
        return switch (said.fact()) {
            case "held by" -> hold(said, false);
            case "held loosely by" -> hold(said, true);
            case "tethered by" ->
                    all(named.items(said.rest(), Connector.class::isInstance), tethers);
            case "covers" -> all(named.items(said.rest(), this::another), covered);
            case "number" -> numbered(said);
            case "renewed" -> renews(said.bare());
            case "static" -> isSensitive(said.bare());
            default -> false;
        };
    }

    private boolean renews(boolean told) {
        renewed |= told;
        return told;
    }

    private boolean isSensitive(boolean told) {
        sensitive |= told;
        return told;
    }

    private boolean another(Item item) {
        return !item.id().equals(part.id());
    }

    private boolean hold(FactWords said, boolean loosely) {
        List<ItemId> holders = named.items(said.rest(), PartFacts::canHold);
        holders.stream()
                .filter(id -> holds.stream().noneMatch(hold -> hold.holder().equals(id)))
                .forEach(id -> holds.add(new Hold(id, loosely, Extras.NONE)));
        return !holders.isEmpty();
    }

    /** Whether an item can hold a part in its place. */
    static boolean canHold(Item item) {
        return item instanceof FastenerSet
                || item instanceof ClipSet
                || item instanceof Tie
                || item instanceof Joint;
    }

    /** Enters items in a list; false where there are none. */
    static boolean all(List<ItemId> items, List<ItemId> into) {
        items.stream().filter(id -> !into.contains(id)).forEach(into::add);
        return !items.isEmpty();
    }

    private boolean numbered(FactWords said) {
        number = said.single() ? said.rest() : number;
        return said.single();
    }

    @Override
    public Item item(String note) {
        return new Part(
                part.id(),
                part.name(),
                number,
                part.quantity(),
                renewed,
                sensitive,
                holds,
                tethers,
                covered,
                note,
                part.extras());
    }
}
