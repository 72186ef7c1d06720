package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.ChangeStep;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.edit.SetTools;
import counterstep.handbook.DriveFit;
import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts a tool that fits in place of one that does not: a listed one, else one added to the list.
 */
final class FittingTool {
    private static final String NAME = "Change tool";

    private final Facts facts;
    private final FastenerSet set;
    private final Tool fitting;
    private final List<Edit> edits = new ArrayList<>();

    private FittingTool(Facts facts, FastenerSet set, Drive drive) {
        this.facts = facts;
        this.set = set;
        Optional<Tool> listed =
                facts.procedure().tools().stream().filter(tool -> fits(tool, drive)).findFirst();
        this.fitting =
                listed.orElseGet(
                        () ->
                                ToolList.of(facts)
                                        .numbered(facts.tooling().forDrive(drive).orElseThrow()));
        if (listed.isEmpty()) {
            edits.add(ToolList.of(facts).with(fitting));
        }
    }

    private static boolean fits(Tool tool, Drive drive) {
        return tool.drive().filter(own -> DriveFit.fits(own, drive)).isPresent();
    }

    /** The exchange; or the exchange, and off the list what is then used no more. */
    static Stream<Fix> fixes(Facts facts, Finding finding, FastenerSet set) {
        return set.drive().stream()
                .map(drive -> new FittingTool(facts, set, drive))
                .flatMap(change -> change.fixes(finding));
    }

    private Stream<Fix> fixes(Finding finding) {
        for (Step step : finding.steps().stream().map(facts.index()::step).toList()) {
            edits.add(new ChangeStep(changed(step), NAME));
        }
        Edits exchange = new Edits(NAME, edits);
        edits.add(withoutUnused(exchange.apply(facts.procedure())));
        return Stream.of(exchange, new Edits(NAME, edits))
                .map(edit -> new Fix("Use " + fitting.name(), edit));
    }

    private Edit withoutUnused(Procedure after) {
        List<Tool> unused = new ArrayList<>(ToolNotUsed.unused(Facts.of(after)));
        unused.removeAll(ToolNotUsed.unused(facts));
        return new SetTools(after.tools().stream().filter(tool -> !unused.contains(tool)).toList());
    }

    /** The step's own tool where all that it turns takes the new one, else the action's. */
    private Step changed(Step step) {
        boolean whole =
                step.actions().stream()
                        .filter(action -> action.tool().isEmpty())
                        .allMatch(this::takesFitting);
        List<Action> actions =
                step.actions().stream()
                        .map(action -> whole && action.tool().isEmpty() ? action : changed(action))
                        .toList();
        return step.draft()
                .tool(whole ? Optional.of(fitting.id()) : step.tool())
                .actions(actions)
                .step();
    }

    private boolean takesFitting(Action action) {
        return action.item().map(facts.index()::item).stream()
                .filter(FastenerSet.class::isInstance)
                .flatMap(item -> ((FastenerSet) item).drive().stream())
                .allMatch(drive -> fits(fitting, drive));
    }

    private Action changed(Action action) {
        boolean wrong =
                ToolDoesNotFit.turns(action.verb())
                        && action.item().filter(set.id()::equals).isPresent();
        return wrong ? action.draft().tool(Optional.of(fitting.id())).action() : action;
    }
}
