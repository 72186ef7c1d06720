package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.edit.Edit;
import counterstep.edit.FreshIds;
import counterstep.edit.SetTools;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The tool list of a document, as it would be after a change. */
record ToolList(Procedure procedure) {
    static ToolList of(Facts facts) {
        return new ToolList(facts.procedure());
    }

    /** The same tool under an id that the document has never given. */
    Tool numbered(Tool tool) {
        return new Tool(
                FreshIds.tool(procedure),
                tool.name(),
                tool.kind(),
                tool.drive(),
                tool.inHand(),
                tool.note(),
                tool.extras());
    }

    Edit adding(Tool tool) {
        return with(numbered(tool));
    }

    Edit with(Tool numbered) {
        List<Tool> tools = new ArrayList<>(procedure.tools());
        tools.add(numbered);
        return new SetTools(tools);
    }

    Edit without(Collection<Tool> gone) {
        return new SetTools(
                procedure.tools().stream().filter(tool -> !gone.contains(tool)).toList());
    }
}
