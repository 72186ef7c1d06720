package counterstep.review;

import counterstep.check.Finding;
import counterstep.check.StateWords;
import counterstep.check.WitnessWords;
import counterstep.ledger.ItemState;
import counterstep.ledger.Witness;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.StepId;
import counterstep.review.HowItGoesWrong.Line;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tells a finding by its witness; steps that do nothing to the item are drawn together. */
final class InAnOrder {
    private static final String SOME = "only in some orders that the links allow";

    private final Index index;
    private final Finding finding;
    private final Witness witness;
    private final Map<StepId, ItemState> readings = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<StepId> quiet = new ArrayList<>();
    private int done;

    InAnOrder(Index index, Finding finding, Witness witness) {
        this.index = index;
        this.finding = finding;
        this.witness = witness;
        witness.readings().forEach(reading -> readings.put(reading.after(), reading.state()));
    }

    HowItGoesWrong told() {
        for (StepId step : witness.first()) {
            if (readings.containsKey(step)) {
                tellQuiet();
                done++;
                lines.add(new Line(named(step) + ": " + state(step), List.of(step), done, false));
            } else {
                quiet.add(step);
                done++;
            }
        }
        tellQuiet();
        lines.add(wrong());
        return new HowItGoesWrong(
                lines,
                witness.first(),
                witness.then(),
                witness.bound() ? WitnessWords.BOUND : SOME);
    }

    private void tellQuiet() {
        if (!quiet.isEmpty()) {
            lines.add(new Line(StepNames.of(quiet, index), quiet, done, false));
            quiet.clear();
        }
    }

    private Line wrong() {
        String where = witness.then().map(step -> named(step) + ": ").orElse("");
        return new Line(where + finding.sentence(), witness.then().stream().toList(), done, true);
    }

    private String named(StepId step) {
        return "step " + index.number(step) + StepNames.title(index, step);
    }

    private String state(StepId step) {
        Item item = index.item(witness.about());
        return item.name() + " " + StateWords.of(item, readings.get(step));
    }
}
