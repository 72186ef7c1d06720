package counterstep.check;

import counterstep.ledger.Witness;
import counterstep.ledger.Witness.Reading;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/**
 * A witness as a short numbered story: a line up to each step that acts on the item, with its state
 * then; at last the step that goes wrong.
 */
public final class WitnessWords {
    /** What a bound says of itself. */
    public static final String BOUND =
            "Too many orders to try each: this one may be a false alarm.";

    private final Witness witness;
    private final Index index;

    private WitnessWords(Witness witness, Index index) {
        this.witness = witness;
        this.index = index;
    }

    /**
     * The lines of the story: 'steps 1 to 4, 9: lid screws 3 tight, 2 out', 'steps 5, 6', 'step 12
     * fails'.
     */
    public static List<String> lines(Witness witness, Index index) {
        return new WitnessWords(witness, index).told();
    }

    private List<String> told() {
        List<String> lines = new ArrayList<>();
        int from = 0;
        for (Reading reading : witness.readings()) {
            int to = witness.first().indexOf(reading.after()) + 1;
            if (to > from) {
                lines.add(inOrder(witness.first().subList(from, to)) + ": " + state(reading));
                from = to;
            }
        }
        if (from < witness.first().size()) {
            lines.add(inOrder(witness.first().subList(from, witness.first().size())));
        }
        lines.add(
                witness.then()
                        .map(step -> "step " + index.number(step) + " goes wrong")
                        .orElse("then all is done, and it stays so"));
        return lines;
    }

    private String state(Reading reading) {
        Item item = index.item(witness.about());
        return item.name() + " " + StateWords.of(item, reading.state());
    }

    /** Steps as they follow each other, by page number: 'steps 1 to 4, 9, 5'. */
    private String inOrder(List<StepId> steps) {
        String runs = String.join(", ", StepRuns.of(steps, index));
        return (steps.size() == 1 ? "step " : "steps ") + runs;
    }
}
