package counterstep.review;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/**
 * A finding told as an order of steps, short enough to be convincing: what is done, what the items
 * at fault are like then, and what goes wrong. The order is that of the witness, or of the page.
 *
 * @param lines numbered as they stand; the last one is what goes wrong
 * @param order the steps that are done before it goes wrong
 * @param fails the step that goes wrong; empty where it shows when the order is done
 * @param note in how many orders it is so
 */
public record HowItGoesWrong(
        List<Line> lines, List<StepId> order, Optional<StepId> fails, String note) {
    /** Copies the lists. */
    public HowItGoesWrong {
        lines = List.copyOf(lines);
        order = List.copyOf(order);
    }

    /**
     * One line.
     *
     * @param text what it says
     * @param steps the steps it speaks of, in order
     * @param done how many steps of the order are done when it is
     * @param wrong whether it is what goes wrong
     */
    public record Line(String text, List<StepId> steps, int done, boolean wrong) {
        /** Copies the list. */
        public Line {
            steps = List.copyOf(steps);
        }
    }

    /** Tells a finding of the document of these facts. */
    public static HowItGoesWrong of(Facts facts, Finding finding) {
        return finding.witness()
                .map(witness -> new InAnOrder(facts.index(), finding, witness).told())
                .orElseGet(() -> new OnThePage(facts, finding).told());
    }
}
