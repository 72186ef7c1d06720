package counterstep.editor.items;

import counterstep.ledger.Ledger;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The lines of the register, from the document and what the ledger says of it. */
final class ItemRows {
    private final Ledger ledger;
    private final Set<ItemId> faulty;
    private final Map<StepId, Integer> numbers = new HashMap<>();

    private ItemRows(Procedure procedure, Ledger ledger, Set<ItemId> faulty) {
        this.ledger = ledger;
        this.faulty = faulty;
        for (int page = 0; page < procedure.steps().size(); page++) {
            numbers.put(procedure.steps().get(page).id(), page + 1);
        }
    }

    /**
     * The register of a procedure.
     *
     * @param ledger of this very procedure
     * @param faulty items that an error speaks of
     */
    static List<ItemRow> of(Procedure procedure, Ledger ledger, Set<ItemId> faulty) {
        ItemRows rows = new ItemRows(procedure, ledger, faulty);
        return ItemHomes.order(procedure).stream()
                .map(entry -> rows.row(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** The register while a newer ledger is on its way: the lines as they were, figures and all. */
    static List<ItemRow> kept(Procedure procedure, List<ItemRow> before) {
        Map<ItemId, ItemRow> old = new HashMap<>();
        before.forEach(row -> old.put(row.item().id(), row));
        return ItemHomes.order(procedure).stream()
                .map(entry -> kept(entry.getKey(), entry.getValue(), old))
                .toList();
    }

    private static ItemRow kept(Item item, boolean under, Map<ItemId, ItemRow> old) {
        ItemRow fresh = new ItemRow(item, under, Integer.toString(item.quantity()), "", "", false);
        ItemRow row = old.getOrDefault(item.id(), fresh);
        return new ItemRow(item, under, row.amount(), row.off(), row.back(), row.fault());
    }

    private ItemRow row(Item item, boolean under) {
        Optional<StepId> off = ledger.offAt(item.id());
        return new ItemRow(
                item,
                under,
                amount(item, off.isPresent()),
                number(off),
                number(ledger.backAt(item.id())),
                faulty.contains(item.id()));
    }

    private String number(Optional<StepId> step) {
        return step.map(numbers::get).map(Object::toString).orElse("");
    }

    private String amount(Item item, boolean goesOff) {
        if (item instanceof Part part && part.renewed()) {
            return "renew";
        }
        if (!goesOff && (item instanceof Part || item instanceof EnergySource)) {
            return "stays in";
        }
        boolean aside =
                item instanceof Part
                        && ledger.happenings(item.id()).stream()
                                .map(happening -> happening.what().verb())
                                .findFirst()
                                .filter(Verb.MOVE_ASIDE::equals)
                                .isPresent();
        return aside ? "aside" : Integer.toString(item.quantity());
    }
}
