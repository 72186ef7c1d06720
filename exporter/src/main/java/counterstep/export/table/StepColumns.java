package counterstep.export.table;

import counterstep.export.Print;
import counterstep.export.guide.ActionRow;
import counterstep.export.guide.Guide;
import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.PickedUp;
import counterstep.export.guide.PlainText;
import counterstep.export.guide.StepBlock;
import counterstep.export.guide.ToolTag;
import counterstep.ledger.Totals;
import counterstep.model.Step;
import counterstep.plan.Durations;
import java.util.List;

/** One row a step, in page order, with what lies on the bench after it. */
final class StepColumns {
    private static final List<String> COLUMNS =
            List.of(
                    "step",
                    "id",
                    "phase",
                    "title",
                    "hazards",
                    "tools picked up",
                    "text",
                    "actions",
                    "hands seconds",
                    "waiting seconds",
                    "second person",
                    "safe to pause",
                    "standing",
                    "photos",
                    "out",
                    "open or loose",
                    "parts off");

    private final Print print;
    private final PickedUp picked;

    private StepColumns(Print print) {
        this.print = print;
        this.picked = new PickedUp(print);
    }

    static Table table(Print print, Guide guide) {
        StepColumns columns = new StepColumns(print);
        return new Table(
                "steps",
                COLUMNS,
                guide.phases().stream()
                        .map(PhaseBlock::steps)
                        .flatMap(List::stream)
                        .map(columns::cells)
                        .toList());
    }

    private List<String> cells(StepBlock block) {
        Step step = print.procedure().steps().get(block.number() - 1);
        Totals totals = print.facts().ledger().totals(step.id());
        List<String> tools = picked.within(step).stream().map(ToolTag::label).toList();
        return List.of(
                Cell.number(block.number()),
                Cell.text(step.id().value()),
                step.phase().word(),
                Cell.text(block.title()),
                Cell.texts(block.hazards().stream().map(StepColumns::hazard).toList()),
                Cell.texts(tools),
                Cell.text(PlainText.written(block.text())),
                Cell.texts(block.actions().stream().map(ActionRow::words).toList()),
                Cell.number(step.seconds()),
                Cell.number(Durations.waitSeconds(step)),
                Cell.text(step.secondPerson()),
                Cell.yes(step.safeToPause()),
                step.standing().trial().word(),
                Cell.number(step.photos().size()),
                Cell.number(totals.out()),
                Cell.number(totals.openOrLoose()),
                Cell.number(totals.partsOff()));
    }

    private static String hazard(HazardBlock hazard) {
        return hazard.signal() + ": " + String.join(" ", hazard.sentences());
    }
}
