package counterstep.toolchange;

import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The tool of each action: the one it names, else the one its step names, else the one that the
 * drive of its fastener asks for. Without any of these it is done with bare hands.
 */
public final class Tooling {
    private final List<Step> steps;
    private final Map<ToolId, Tool> tools = new HashMap<>();
    private final Map<ItemId, Drive> drives = new HashMap<>();
    private final Map<Drive, Tool> byDrive;

    private Tooling(Procedure procedure) {
        steps = procedure.steps();
        procedure.tools().forEach(tool -> tools.put(tool.id(), tool));
        for (Item item : procedure.items()) {
            if (item instanceof FastenerSet set) {
                set.drive().ifPresent(drive -> drives.put(set.id(), drive));
            }
        }
        byDrive = MadeUpTools.byDrive(procedure);
    }

    /** Reads tools, fasteners and steps of a document. */
    public static Tooling of(Procedure procedure) {
        return new Tooling(procedure);
    }

    /**
     * The tool in use during an action of a step; empty for bare hands. A wait is bare hands even
     * in a step that names a tool.
     */
    public Optional<Tool> toolOf(Step step, Action action) {
        return action.verb() == Verb.WAIT ? Optional.empty() : needed(step, action);
    }

    /** The tools that a step takes in hand, one after the other; none for bare hands. */
    public List<Tool> inTurn(Step step) {
        List<Tool> turn = new ArrayList<>();
        Stream<Optional<Tool>> uses =
                step.actions().isEmpty()
                        ? Stream.of(named(step))
                        : step.actions().stream().map(action -> toolOf(step, action));
        uses.flatMap(Optional::stream)
                .filter(Tool::inHand)
                .filter(tool -> turn.isEmpty() || !turn.get(turn.size() - 1).equals(tool))
                .forEach(turn::add);
        return List.copyOf(turn);
    }

    /** The tools of a document in the order in which its pages first use or name them. */
    public List<ToolUse> byFirstUse() {
        Map<Tool, Set<StepId>> uses = new LinkedHashMap<>();
        for (Step step : steps) {
            for (Action action : step.actions()) {
                needed(step, action).ifPresent(tool -> note(uses, tool, step));
            }
            if (step.actions().isEmpty()) {
                named(step).ifPresent(tool -> note(uses, tool, step));
            }
        }
        return uses.entrySet().stream()
                .map(use -> new ToolUse(use.getKey(), List.copyOf(use.getValue())))
                .toList();
    }

    private static void note(Map<Tool, Set<StepId>> uses, Tool tool, Step step) {
        uses.computeIfAbsent(tool, unused -> new LinkedHashSet<>()).add(step.id());
    }

    /** The tool of a drive that a fastener has: a listed one, else one made up for it. */
    public Optional<Tool> forDrive(Drive drive) {
        return Optional.ofNullable(byDrive.get(drive));
    }

    /** The tool that a step names for all its actions. */
    Optional<Tool> named(Step step) {
        return step.tool().map(tools::get);
    }

    private Optional<Tool> needed(Step step, Action action) {
        return action.tool().map(tools::get).or(() -> named(step)).or(() -> derived(action));
    }

    private Optional<Tool> derived(Action action) {
        return turns(action.verb())
                ? action.item().map(drives::get).map(byDrive::get)
                : Optional.empty();
    }

    private static boolean turns(Verb verb) {
        return switch (verb) {
            case LOOSEN, TIGHTEN, REMOVE, REINSTALL, FIT_NEW -> true;
            case DISCARD, UNCLIP, CLIP, CUT, DISCONNECT, RECONNECT, RELEASE, LAY, PRESS -> false;
            case REJOIN, MOVE_ASIDE, RETURN, TAKE_AWAY, BRING_IN, NOTE, RESTORE -> false;
            case ISOLATE, PROVE_DEAD, RESTORE_POWER, APPLY, CLEAN, CHECK, ALIGN, WAIT -> false;
        };
    }
}
