package counterstep.export.bench;

import counterstep.export.Print;
import counterstep.export.guide.Sentences;
import counterstep.export.guide.StepNumbers;
import counterstep.ledger.Totals;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What stands below the rows. */
final class Remarks {
    private final Print print;

    Remarks(Print print) {
        this.print = print;
    }

    String closing() {
        Totals end = print.facts().ledger().totalsAtEnd();
        return end.equals(Totals.NOTHING)
                ? "At the end all three columns read 0. If not, stop and look."
                : "Not complete: at the end not all three columns read 0. Do not work by this sheet.";
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        numbered("Safe to pause after ", Step::safeToPause, notes);
        numbered("A second person helps at ", step -> !step.secondPerson().isBlank(), notes);
        List<Integer> left = numbers(step -> step.actions().isEmpty());
        notes.add(
                left.isEmpty()
                        ? "Every step is on this sheet."
                        : Sentences.begun(StepNumbers.withWord(left))
                                + (left.size() == 1 ? " acts" : " act")
                                + " on nothing; see the guide.");
        return notes;
    }

    private void numbered(String before, Predicate<Step> which, List<String> notes) {
        List<Integer> numbers = numbers(which);
        if (!numbers.isEmpty()) {
            notes.add(before + StepNumbers.withWord(numbers) + ".");
        }
    }

    private List<Integer> numbers(Predicate<Step> which) {
        return print.procedure().steps().stream()
                .filter(which)
                .map(step -> print.facts().index().number(step.id()))
                .toList();
    }
}
