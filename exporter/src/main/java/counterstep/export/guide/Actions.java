package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The actions of one step as rows. */
final class Actions {
    private final Print print;
    private final PickedUp picked;
    private final Step step;

    Actions(Print print, PickedUp picked, Step step) {
        this.print = print;
        this.picked = picked;
        this.step = step;
    }

    List<ActionRow> rows() {
        List<ActionRow> rows = new ArrayList<>();
        for (int place = 0; place < step.actions().size(); place++) {
            rows.add(row(step.actions().get(place), place));
        }
        return rows;
    }

    private ActionRow row(Action action, int place) {
        Optional<Item> item = action.item().map(print.facts().index()::item);
        Optional<Blank> blank = blank(action, item);
        return new ActionRow(
                action.verb().word(),
                item,
                item.map(acted -> what(action, acted)).orElse(""),
                new ActionDetails(print, action, item, blank.isPresent()).all(),
                action.item().map(this::callouts).orElse(List.of()),
                picked.atAction(step, place),
                blank);
    }

    private static String what(Action action, Item item) {
        int count = action.count();
        if (count == 1 && item.quantity() == 1) {
            return item.name();
        }
        String of = count < item.quantity() ? " of " + item.quantity() : "";
        return count + of + " " + item.name();
    }

    private List<Integer> callouts(ItemId item) {
        return step.photos().stream()
                .map(StepPhoto::callouts)
                .flatMap(List::stream)
                .filter(callout -> callout.item().equals(Optional.of(item)))
                .map(Callout::number)
                .distinct()
                .sorted()
                .toList();
    }

    /** Where a value is written: what is noted, proved, or checked against a limit. */
    private static Optional<Blank> blank(Action action, Optional<Item> item) {
        String unit =
                item.filter(Setting.class::isInstance)
                        .map(setting -> ((Setting) setting).unit())
                        .orElse("");
        if (action.verb() == Verb.NOTE) {
            return Optional.of(new Blank(action.reading(), unit));
        }
        if (action.verb() == Verb.PROVE_DEAD) {
            String limit =
                    item.filter(EnergySource.class::isInstance)
                            .map(source -> ((EnergySource) source).limit())
                            .orElse("");
            String label = action.reading().isBlank() ? limit : action.reading();
            return Optional.of(new Blank(label, ""));
        }
        return action.reading().isBlank()
                ? Optional.empty()
                : Optional.of(new Blank(action.reading(), unit));
    }
}
