package counterstep.excerpt;

import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The steps of a document as plain text, to be pasted into a mail or a word processor. */
public final class PlainSteps {
    private PlainSteps() {}

    /**
     * Number and title of each step, its text, then a line for each action, 'remove 2 clamp
     * screws'; an empty line between steps.
     *
     * @param numbersOf the document whose page numbers the steps carry
     */
    public static String of(Procedure steps, Procedure numbersOf) {
        return steps.steps().stream()
                .map(step -> step(step, steps, numbersOf.pageNumber(step.id())))
                .collect(Collectors.joining("\n\n"));
    }

    private static String step(Step step, Procedure steps, int number) {
        List<String> lines = new ArrayList<>();
        lines.add(number + ". " + step.title());
        if (!step.text().isBlank()) {
            lines.add(step.text().strip());
        }
        step.actions().forEach(action -> lines.add("- " + action(action, steps)));
        return String.join("\n", lines);
    }

    private static String action(Action action, Procedure steps) {
        Optional<Item> item = action.item().map(steps::item);
        String count =
                item.filter(counted -> counted.quantity() > 1).isPresent()
                        ? action.count() + " "
                        : "";
        String how = action.fingerTight() ? ", finger-tight" : "";
        return (action.verb().word() + " " + count + item.map(Item::name).orElse("")).strip()
                + how
                + (action.remark().isEmpty() ? "" : ", " + action.remark());
    }
}
