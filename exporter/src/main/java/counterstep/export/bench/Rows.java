package counterstep.export.bench;

import counterstep.export.Print;
import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.PickedUp;
import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Step;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The steps that act or check, with a count of what lies on the mat where it can still be put
 * right: when the device lies in pieces, and before a cover hides what is under it.
 */
final class Rows {
    private static final Set<Verb> CLOSING =
            Set.of(Verb.REINSTALL, Verb.RETURN, Verb.FIT_NEW, Verb.BRING_IN);

    private final Print print;
    private final PickedUp picked;
    private final List<SheetRow> rows = new ArrayList<>();

    Rows(Print print) {
        this.print = print;
        this.picked = new PickedUp(print);
    }

    List<SheetRow> all() {
        Phase before = Phase.PREPARE;
        for (Step step : print.procedure().steps()) {
            if (before == Phase.TEARDOWN && step.phase() != Phase.TEARDOWN) {
                count("end of teardown");
            }
            before = step.phase();
            if (!step.actions().isEmpty()) {
                cover(step).ifPresent(part -> count("before the " + part.name()));
                rows.add(work(step));
            }
        }
        return rows;
    }

    /** Never two in a row: nothing has happened between them. */
    private void count(String when) {
        boolean counted = rows.isEmpty() || rows.get(rows.size() - 1) instanceof SheetRow.Count;
        if (!counted) {
            rows.add(new SheetRow.Count(when));
        }
    }

    private Optional<Part> cover(Step step) {
        return step.actions().stream()
                .filter(action -> CLOSING.contains(action.verb()))
                .map(this::item)
                .flatMap(Optional::stream)
                .filter(Part.class::isInstance)
                .map(Part.class::cast)
                .filter(part -> !part.covers().isEmpty())
                .findFirst();
    }

    private Optional<Item> item(Action action) {
        return action.item().map(print.facts().index()::item);
    }

    private SheetRow work(Step step) {
        return new SheetRow.Work(
                print.facts().index().number(step.id()),
                step.title().isBlank() ? firstAct(step) : step.title(),
                HazardBlock.of(step.hazards()),
                picked.within(step),
                new StepNotes(print, step).all(),
                print.facts().ledger().totals(step.id()));
    }

    private String firstAct(Step step) {
        Action first = step.actions().get(0);
        return (first.verb().word() + " " + item(first).map(Item::name).orElse("")).strip();
    }
}
