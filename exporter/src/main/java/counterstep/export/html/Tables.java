package counterstep.export.html;

import counterstep.export.guide.FastenerRow;
import counterstep.export.guide.Guide;
import counterstep.export.guide.NeedRow;
import counterstep.export.guide.PhaseTime;
import counterstep.export.guide.StepNumbers;
import counterstep.export.guide.ToolRow;
import counterstep.export.shape.DriveShape;
import counterstep.model.Drive;
import counterstep.model.Revision;
import java.util.List;

/** The tables of a guide: what is needed, fasteners, times, revisions. */
final class Tables {
    private final Markup markup;

    Tables(Markup markup) {
        this.markup = markup;
    }

    void needs(Guide guide) {
        if (!guide.tools().isEmpty()) {
            markup.openTable("tool-list", "Tools, in order of first use", "step");
            guide.tools().forEach(this::tool);
            markup.closeTable();
        }
        if (!guide.needs().isEmpty()) {
            markup.openTable("parts", "Parts and supplies", "how much", "step");
            guide.needs().forEach(this::need);
            markup.closeTable();
        }
    }

    private void tool(ToolRow row) {
        markup.open("tr").open("th", "scope", "row");
        markup.mark(row.drive().map(DriveShape::of));
        markup.text(row.name()).close();
        markup.element("td", StepNumbers.text(row.steps())).close();
    }

    private void need(NeedRow row) {
        markup.open("tr").open("th", "scope", "row").text(row.name());
        if (!row.number().isBlank()) {
            markup.text(" ").element("span", "no. " + row.number(), "class", "soft");
        }
        markup.close();
        markup.element("td", row.amount());
        markup.element("td", StepNumbers.text(row.steps())).close();
    }

    void fasteners(List<FastenerRow> rows) {
        markup.openTable(
                "fasteners",
                "Fastener",
                "Drive",
                "Size, head",
                "Goes into",
                "Torque, order",
                "Use, tray",
                "Off",
                "Back");
        rows.forEach(this::fastener);
        markup.closeTable();
    }

    private void fastener(FastenerRow row) {
        markup.open("tr");
        markup.element("th", row.count() + " × " + row.name(), "scope", "row");
        markup.open("td");
        markup.mark(row.drive().map(DriveShape::of));
        markup.text(row.drive().map(Drive::label).orElse("")).close();
        markup.element("td", joined(row.size(), row.head()));
        markup.element("td", row.into());
        markup.open("td").element("strong", row.torque());
        markup.text(row.torque().isEmpty() || row.order().isEmpty() ? "" : ", ");
        markup.text(row.order()).close();
        markup.element("td", joined(row.use(), row.tray().isBlank() ? "" : "tray " + row.tray()));
        markup.element("td", StepNumbers.text(row.off()));
        markup.element("td", StepNumbers.text(row.back())).close();
    }

    void times(List<PhaseTime> rows) {
        markup.openTable("times", "Phase", "steps", "time, min:s", "of it waiting", "tool changes");
        for (PhaseTime row : rows) {
            markup.open("tr").element("th", row.phase(), "scope", "row");
            markup.element("td", Integer.toString(row.steps()));
            markup.element("td", row.time());
            markup.element("td", row.waiting());
            markup.element("td", Integer.toString(row.toolChanges())).close();
        }
        markup.closeTable();
    }

    void revisions(List<Revision> revisions) {
        markup.openTable("revisions", "Revision", "date", "author", "what changed");
        for (Revision revision : revisions) {
            markup.open("tr").element("th", revision.number(), "scope", "row");
            markup.element("td", revision.date());
            markup.element("td", revision.author());
            markup.element("td", revision.changed()).close();
        }
        markup.closeTable();
    }

    private static String joined(String first, String second) {
        return first.isBlank() || second.isBlank() ? first + second : first + ", " + second;
    }
}
