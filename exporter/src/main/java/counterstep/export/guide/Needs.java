package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Step;
import counterstep.model.Supply;
import counterstep.model.SupplyUse;
import counterstep.model.Tool;
import counterstep.model.Verb;
import counterstep.toolchange.ToolUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/** What must lie ready before the work starts. */
final class Needs {
    private final Print print;

    Needs(Print print) {
        this.print = print;
    }

    /** Tools in order of first use. */
    List<ToolRow> tools() {
        return print.tooling().byFirstUse().stream().map(this::row).toList();
    }

    private ToolRow row(ToolUse use) {
        Tool tool = use.tool();
        return new ToolRow(
                Sentences.listed(List.of(tool.name(), tool.note())),
                tool.drive(),
                use.steps().stream().map(print.facts().index()::number).toList());
    }

    /** New parts, fasteners and ties, then what is used up. */
    List<NeedRow> partsAndSupplies() {
        List<NeedRow> rows = new ArrayList<>();
        for (Item item : print.procedure().items()) {
            newOnes(item).ifPresent(rows::add);
        }
        print.procedure().supplies().forEach(supply -> rows.add(row(supply)));
        return rows;
    }

    /** What is fitted new of an item, or a part that should be but never is. */
    private Optional<NeedRow> newOnes(Item item) {
        int count = 0;
        for (Step step : print.procedure().steps()) {
            for (Action action : step.actions()) {
                count += fits(action, item.id()) ? action.count() : 0;
            }
        }
        boolean meant = item instanceof Part part && part.renewed();
        if (count == 0 && !meant) {
            return Optional.empty();
        }
        String number = item instanceof Part part ? part.number() : "";
        String name =
                item instanceof FastenerSet set
                        ? Sentences.listed(List.of(set.name(), set.size()))
                        : item.name();
        String amount = Math.max(count, meant ? item.quantity() : 0) + ", new";
        List<Integer> steps = stepsWhere(action -> fits(action, item.id()));
        return Optional.of(new NeedRow(name, false, number, amount, steps));
    }

    private static boolean fits(Action action, ItemId item) {
        return action.verb() == Verb.FIT_NEW && action.item().equals(Optional.of(item));
    }

    private NeedRow row(Supply supply) {
        List<SupplyUse> uses =
                print.procedure().steps().stream()
                        .flatMap(step -> step.actions().stream())
                        .flatMap(action -> action.supplies().stream())
                        .filter(use -> use.supply().equals(supply.id()))
                        .toList();
        String amount =
                supply.amount().isBlank()
                        ? Sentences.listed(uses.stream().map(SupplyUse::amount).toList())
                        : supply.amount();
        List<Integer> steps =
                stepsWhere(
                        action ->
                                action.supplies().stream()
                                        .anyMatch(use -> use.supply().equals(supply.id())));
        String details = Sentences.listed(List.of(amount, supply.note()));
        return new NeedRow(supply.name(), true, "", details, steps);
    }

    private List<Integer> stepsWhere(Predicate<Action> wanted) {
        TreeSet<Integer> numbers = new TreeSet<>();
        for (Step step : print.procedure().steps()) {
            if (step.actions().stream().anyMatch(wanted)) {
                numbers.add(print.facts().index().number(step.id()));
            }
        }
        return List.copyOf(numbers);
    }
}
