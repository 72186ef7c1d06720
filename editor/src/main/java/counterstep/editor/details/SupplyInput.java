package counterstep.editor.details;

import counterstep.editor.form.Input;
import counterstep.editor.form.PickInput;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.model.Supply;
import counterstep.model.SupplyId;
import counterstep.model.SupplyUse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The supplies that an action uses; amounts already written are kept. */
final class SupplyInput {
    private final Map<SupplyId, String> names = new HashMap<>();
    private final PickInput<SupplyId> pick;
    private List<SupplyUse> shown = List.of();

    SupplyInput(Runnable changed) {
        pick = new PickInput<>("Uses up", id -> names.getOrDefault(id, id.value()), changed);
    }

    Input<?> input() {
        return pick;
    }

    void offer(Procedure open) {
        names.clear();
        open.supplies().forEach(supply -> names.put(supply.id(), supply.name()));
        pick.offer(open.supplies().stream().map(Supply::id).toList());
    }

    void show(List<SupplyUse> uses) {
        shown = uses;
        pick.show(uses.stream().map(SupplyUse::supply).toList());
    }

    List<SupplyUse> value() {
        return pick.value().stream().map(this::use).toList();
    }

    private SupplyUse use(SupplyId id) {
        return shown.stream()
                .filter(old -> old.supply().equals(id))
                .findFirst()
                .orElseGet(() -> new SupplyUse(id, "", Extras.NONE));
    }
}
