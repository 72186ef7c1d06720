package counterstep.export.bench;

import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.ToolTag;
import counterstep.export.html.Head;
import counterstep.export.html.Markup;
import counterstep.export.html.Style;
import counterstep.export.shape.DriveShape;
import counterstep.ledger.Totals;
import java.util.List;
import java.util.stream.IntStream;

/** Sets a bench sheet as one page of HTML, which a browser and the PDF maker lay out alike. */
final class BenchSheetPage {
    private static final String NAME = "Bench sheet";
    private static final String[] COLUMNS = {
        "done", "step", "do", "tool", "count, torque, note", "out", "open or loose", "parts off"
    };

    private final BenchSheet sheet;
    private final Markup markup = new Markup();

    private BenchSheetPage(BenchSheet sheet) {
        this.sheet = sheet;
    }

    static String of(BenchSheet sheet, Style style) {
        return new BenchSheetPage(sheet).set(style);
    }

    private String set(Style style) {
        Head.set(markup, "en", NAME + ": " + sheet.title().title(), style);
        markup.open("body");
        head();
        markup.open("main");
        rows();
        foot();
        return markup.close().close().close().own("\n").toString();
    }

    private void head() {
        markup.open("table", "class", "head").open("tbody").open("tr").open("td");
        markup.element("h1", NAME);
        markup.element("p", sheet.imprint().name(), "class", "soft").close();
        markup.open("td", "class", "fields");
        for (String[] line : new String[][] {{"unit no.", "date"}, {"done by", "checked"}}) {
            markup.open("p");
            for (String field : line) {
                markup.element("span", field, "class", "field");
            }
            markup.close();
        }
        markup.close().close().close().close();
        if (!sheet.title().unfinished().isEmpty()) {
            markup.element("p", sheet.title().unfinished(), "class", "unfinished");
        }
        cautions();
    }

    private void cautions() {
        if (sheet.cautions().isEmpty()) {
            return;
        }
        markup.open("table", "class", "cautions").open("tbody");
        for (HazardBlock caution : sheet.cautions()) {
            markup.open("tr").open("td", "class", "box-cell").element("span", "", "class", "box");
            markup.close().open("td");
            notice(caution);
            markup.close().close();
        }
        markup.close().close();
    }

    private void notice(HazardBlock hazard) {
        markup.element("strong", hazard.signal().name(), "class", "signal").text(" ");
        markup.text(String.join(" ", hazard.sentences()));
    }

    private void rows() {
        markup.open("table", "class", "rows").open("thead").open("tr");
        for (int column = 0; column < COLUMNS.length; column++) {
            markup.element("th", COLUMNS[column], "scope", "col", "class", "c" + column);
        }
        markup.close().close();
        sheet.rows().forEach(this::row);
        markup.close();
    }

    private void row(SheetRow row) {
        if (row instanceof SheetRow.Work work) {
            work(work);
        } else if (row instanceof SheetRow.Count count) {
            count(count);
        }
    }

    /** A body of its own, so that notices stay with their step. */
    private void work(SheetRow.Work work) {
        markup.open("tbody", "class", "work");
        for (HazardBlock hazard : work.hazards()) {
            markup.open("tr", "class", "hazard").element("td", "");
            markup.open("td", "colspan", Integer.toString(COLUMNS.length - 1));
            notice(hazard);
            markup.close().close();
        }
        markup.open("tr").open("td", "class", "box-cell").element("span", "", "class", "box");
        markup.close().element("th", Integer.toString(work.number()), "scope", "row");
        markup.element("td", work.title(), "class", "do");
        markup.open("td", "class", "tools");
        work.tools().forEach(this::tool);
        markup.close().open("td");
        notes(work.notes());
        markup.close();
        totals(work.totals());
        markup.close().close();
    }

    private void tool(ToolTag tool) {
        markup.open("span", "class", tool.drive().isPresent() ? "tool driven" : "tool");
        markup.mark(tool.drive().map(DriveShape::of));
        markup.text(tool.label()).close().text(" ");
    }

    private void notes(List<Note> notes) {
        for (int place = 0; place < notes.size(); place++) {
            Note note = notes.get(place);
            markup.text(place == 0 ? "" : "; ");
            if (note.blank()) {
                toFill(note);
            } else {
                markup.text(note.words());
            }
        }
    }

    /** The line to write on stays with the word before it. */
    private void toFill(Note note) {
        int last = note.words().lastIndexOf(' ') + 1;
        markup.text(note.words().substring(0, last)).open("span", "class", "fill");
        markup.text(note.words().substring(last) + " ").element("span", "", "class", "blank");
        markup.text(note.unit().isBlank() ? "" : " " + note.unit()).close();
    }

    private void totals(Totals totals) {
        markup.element("td", Integer.toString(totals.out()), "class", "figure out");
        markup.element("td", Integer.toString(totals.openOrLoose()), "class", "figure");
        markup.element("td", Integer.toString(totals.partsOff()), "class", "figure");
    }

    private void count(SheetRow.Count count) {
        markup.open("tbody", "class", "count").open("tr");
        markup.open("td", "colspan", "5").element("strong", count.when() + ":");
        markup.text(" counted on the mat:").close();
        IntStream.range(0, 3)
                .forEach(
                        column ->
                                markup.open("td", "class", "figure")
                                        .element("span", "", "class", "blank short")
                                        .close());
        markup.close().close();
    }

    private void foot() {
        markup.open("p", "class", "closing").element("strong", sheet.closing());
        sheet.notes().forEach(note -> markup.text(" " + note));
        markup.close();
    }
}
