package counterstep.export.table;

import counterstep.export.guide.Guide;
import counterstep.export.guide.NeedRow;
import counterstep.export.guide.ToolRow;
import counterstep.model.Drive;
import java.util.List;

/** What must lie ready: tools in order of first use, parts and supplies. */
final class NeedTables {
    private NeedTables() {}

    static Table tools(Guide guide) {
        return new Table(
                "tools",
                List.of("tool", "drive", "first step", "steps"),
                guide.tools().stream().map(NeedTables::tool).toList());
    }

    private static List<String> tool(ToolRow row) {
        return List.of(
                Cell.text(row.name()),
                Cell.text(row.drive().map(Drive::label).orElse("")),
                Cell.number(row.steps().get(0)),
                Cell.steps(row.steps()));
    }

    static Table parts(Guide guide) {
        return new Table(
                "parts",
                List.of("kind", "name", "part number", "amount", "steps"),
                guide.needs().stream().map(NeedTables::need).toList());
    }

    private static List<String> need(NeedRow row) {
        return List.of(
                row.usedUp() ? "supply" : "part",
                Cell.text(row.name()),
                Cell.text(row.number()),
                Cell.text(row.amount()),
                Cell.steps(row.steps()));
    }
}
