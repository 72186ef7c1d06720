package counterstep.edit;

import counterstep.model.Action;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Sets the tool list. Steps and actions that used a tool which is gone lose it.
 *
 * @param tools the whole list as it shall be
 */
public record SetTools(List<Tool> tools) implements Edit {
    /** Copies the list. */
    public SetTools {
        tools = List.copyOf(tools);
    }

    @Override
    public String name() {
        return "Change tool list";
    }

    @Override
    public Procedure apply(Procedure before) {
        Set<ToolId> listed = tools.stream().map(Tool::id).collect(Collectors.toSet());
        return before.draft()
                .tools(tools)
                .steps(before.steps().stream().map(step -> using(listed, step)).toList())
                .procedure();
    }

    private static Step using(Set<ToolId> listed, Step step) {
        Optional<ToolId> tool = step.tool().filter(listed::contains);
        List<Action> actions =
                step.actions().stream()
                        .map(
                                action ->
                                        action.draft()
                                                .tool(action.tool().filter(listed::contains))
                                                .action())
                        .toList();
        return tool.equals(step.tool()) && actions.equals(step.actions())
                ? step
                : step.draft().tool(tool).actions(actions).step();
    }
}
