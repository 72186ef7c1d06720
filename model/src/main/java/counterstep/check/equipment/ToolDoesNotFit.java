package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.handbook.DriveFit;
import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A driver of another drive or size slips and spoils the head (common practice). */
final class ToolDoesNotFit implements Check {
    /** One wrong belief: that this tool turns these fasteners. */
    private record Mismatch(Tool tool, FastenerSet set) {}

    @Override
    public About about() {
        return new About(
                "tool-does-not-fit",
                Severity.ERROR,
                "A tool is used on fasteners whose drive or size it does not fit.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<Mismatch, List<StepId>> faults = new LinkedHashMap<>();
        for (Step step : facts.procedure().steps()) {
            for (Action action : step.actions()) {
                mismatch(facts, step, action)
                        .ifPresent(
                                fault ->
                                        faults.computeIfAbsent(fault, fresh -> new ArrayList<>())
                                                .add(step.id()));
            }
        }
        return faults.entrySet().stream()
                .map(fault -> finding(facts, fault.getKey(), fault.getValue()));
    }

    private static Optional<Mismatch> mismatch(Facts facts, Step step, Action action) {
        if (!turns(action.verb())) {
            return Optional.empty();
        }
        return action.item()
                .map(facts.index()::item)
                .flatMap(item -> mismatch(facts.tooling().toolOf(step, action), item));
    }

    private static Optional<Mismatch> mismatch(Optional<Tool> tool, Item item) {
        if (tool.isEmpty() || !(item instanceof FastenerSet set)) {
            return Optional.empty();
        }
        return set.drive()
                .filter(drive -> !fits(tool.get(), drive))
                .map(drive -> new Mismatch(tool.get(), set));
    }

    /** A tool whose drive is not stated may fit, unless its kind neither turns nor grips one. */
    private static boolean fits(Tool tool, Drive drive) {
        return tool.drive().map(own -> DriveFit.fits(own, drive)).orElse(mayTurn(tool.kind()));
    }

    private static boolean mayTurn(ToolKind kind) {
        return switch (kind) {
            case DRIVER, KEY, SOCKET, WRENCH, PLIERS, TWEEZERS, OTHER -> true;
            case PICK, SPUDGER, CUTTER, SPATULA, KNIFE, CALIPER, METER -> false;
            case HEATER, IRON, ANTISTATIC -> false;
        };
    }

    static boolean turns(Verb verb) {
        return switch (verb) {
            case LOOSEN, TIGHTEN, REMOVE, REINSTALL, FIT_NEW -> true;
            case DISCARD, UNCLIP, CLIP, CUT, DISCONNECT, RECONNECT -> false;
            case RELEASE, LAY, PRESS, REJOIN, MOVE_ASIDE, RETURN, TAKE_AWAY, BRING_IN -> false;
            case NOTE, RESTORE, ISOLATE, PROVE_DEAD, RESTORE_POWER -> false;
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> false;
        };
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return finding.items().stream()
                .map(facts.index()::item)
                .filter(FastenerSet.class::isInstance)
                .flatMap(set -> FittingTool.fixes(facts, finding, (FastenerSet) set));
    }

    private Finding finding(Facts facts, Mismatch fault, List<StepId> steps) {
        String message =
                fault.tool().name()
                        + " does not fit "
                        + facts.phrases().name(fault.set().id())
                        + " in "
                        + facts.phrases().steps(steps)
                        + ": they need "
                        + fault.set().drive().map(Drive::label).orElse("another tool")
                        + ".";
        return about().finding(Phrases.sentence(message), steps, List.of(fault.set().id()));
    }
}
