package counterstep.toolchange;

import counterstep.model.Action;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A puzzle written as a document: an action for each tool that a step takes up. */
final class PuzzleProcedures {
    private PuzzleProcedures() {}

    static Procedure of(Puzzle puzzle) {
        return Procedure.titled("puzzle", "Puzzle")
                .draft()
                .tools(IntStream.range(0, puzzle.tools()).mapToObj(PuzzleProcedures::tool).toList())
                .steps(
                        IntStream.range(0, puzzle.size())
                                .mapToObj(at -> step(at, puzzle.words().get(at)))
                                .toList())
                .links(
                        puzzle.links().stream()
                                .map(link -> Link.drawn(id(link[0]), id(link[1])))
                                .toList())
                .groups(puzzle.groups().stream().map(PuzzleProcedures::group).toList())
                .procedure();
    }

    /** The places of steps, from 0. */
    static List<Integer> places(List<StepId> steps) {
        return steps.stream().map(step -> Integer.parseInt(step.value().substring(1)) - 1).toList();
    }

    private static Tool tool(int number) {
        return new Tool(
                toolId(number),
                "tool " + number,
                ToolKind.DRIVER,
                Optional.empty(),
                true,
                "",
                Extras.NONE);
    }

    private static ToolId toolId(int number) {
        return new ToolId("t" + (number + 1));
    }

    private static StepId id(int at) {
        return new StepId("s" + (at + 1));
    }

    private static Step step(int at, int[] word) {
        return Step.titled(id(at), Phase.TEARDOWN, "step " + at)
                .draft()
                .actions(Arrays.stream(word).mapToObj(PuzzleProcedures::action).toList())
                .step();
    }

    private static Action action(int tool) {
        return Action.of(Verb.CHECK, Optional.empty(), 1)
                .draft()
                .tool(Optional.of(toolId(tool)))
                .action();
    }

    private static StepGroup group(Puzzle.Company group) {
        List<StepId> steps = group.steps().stream().map(PuzzleProcedures::id).toList();
        return new StepGroup(group.rule(), steps, Extras.NONE);
    }
}
