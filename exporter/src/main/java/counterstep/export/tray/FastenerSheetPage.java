package counterstep.export.tray;

import counterstep.export.Paper;
import counterstep.export.guide.FastenerRow;
import counterstep.export.guide.StepNumbers;
import counterstep.export.html.Head;
import counterstep.export.html.Markup;
import counterstep.export.html.Style;
import counterstep.export.shape.DriveShape;
import counterstep.export.shape.ScrewSide;
import counterstep.model.Drive;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets a fastener sheet as one page of HTML, which a browser and the PDF maker lay out alike. */
final class FastenerSheetPage {
    private static final String NAME = "Fastener sheet";
    private static final String CHECK =
            "100 mm: measure before use. Length counts from under the head, of a countersunk screw"
                    + " over all.";

    /** What the margins and the frame of a cell take of the paper's width, in mm. */
    private static final double MARGINS = 28;

    private static final double FRAME = 10;
    private static final double BETWEEN = 3;
    private static final double MAP = 62;

    private final FastenerSheet sheet;
    private final double wide;
    private final double narrow;
    private final Markup markup = new Markup();

    private FastenerSheetPage(FastenerSheet sheet, Paper paper) {
        this.sheet = sheet;
        this.wide = paper.width() - MARGINS - FRAME;
        this.narrow = (paper.width() - MARGINS - BETWEEN) / 2 - FRAME;
    }

    static String of(FastenerSheet sheet, Style style, Paper paper) {
        return new FastenerSheetPage(sheet, paper).set(style);
    }

    private String set(Style style) {
        Head.set(markup, "en", NAME + ": " + sheet.title().title(), style);
        markup.open("body");
        head();
        markup.open("main");
        cells();
        others();
        return markup.close().close().close().own("\n").toString();
    }

    private void head() {
        markup.element("h1", NAME);
        markup.open("p", "class", "soft").text(sheet.imprint().name());
        markup.text(". Print at 100 %: true size. Lay each screw on its cell; tape the smallest.");
        markup.close();
        if (!sheet.title().unfinished().isEmpty()) {
            markup.element("p", sheet.title().unfinished(), "class", "unfinished");
        }
        markup.open("table", "class", "head").open("tbody").open("tr").open("td");
        markup.own(TrueSize.checkLine());
        markup.element("p", CHECK).close();
        markup.open("td", "class", "map");
        sheet.map().ifPresent(this::map);
        markup.close().close().close().close();
    }

    private void map(HoleMap map) {
        markup.own(TrueSize.map(map, Math.min(MAP, MAP * 0.6 / map.shape())));
        String from = map.seenFrom().isBlank() ? "" : ", seen from " + map.seenFrom();
        markup.open("p").element("strong", "Where they go").text(from).close();
    }

    /** Two cells to a row, a long screw across both. */
    private void cells() {
        if (sheet.cells().isEmpty()) {
            markup.element("p", "No step touches a fastener.");
            return;
        }
        List<TrayCell> row = new ArrayList<>();
        for (TrayCell cell : sheet.cells()) {
            boolean across = side(cell).filter(screw -> !TrueSize.fits(screw, narrow)).isPresent();
            if (across) {
                row(row);
                row(List.of(cell));
                row.clear();
            } else {
                row.add(cell);
                if (row.size() == 2) {
                    row(row);
                    row.clear();
                }
            }
        }
        row(row);
    }

    private static Optional<ScrewSide> side(TrayCell cell) {
        return ScrewSide.of(cell.row().set());
    }

    private void row(List<TrayCell> cells) {
        if (cells.isEmpty()) {
            return;
        }
        boolean across =
                side(cells.get(0)).filter(screw -> !TrueSize.fits(screw, narrow)).isPresent();
        markup.open("table", "class", "cells").open("tbody").open("tr");
        cell(cells.get(0), across ? wide : narrow);
        if (!across) {
            markup.element("td", "", "class", "between");
            if (cells.size() == 2) {
                cell(cells.get(1), narrow);
            } else {
                markup.element("td", "", "class", "none");
            }
        }
        markup.close().close().close();
    }

    private void cell(TrayCell cell, double width) {
        FastenerRow row = cell.row();
        markup.open("td", "class", width == wide ? "cell across" : "cell");
        markup.open("p", "class", "steps").text(steps(row)).close();
        markup.open("h2").element("span", cell.letter(), "class", "letter");
        markup.text(" " + row.count() + " × " + row.name()).close();
        facts(row);
        screws(cell, width);
        if (!cell.alike().isEmpty()) {
            markup.element("p", String.join("; ", cell.alike()), "class", "alike");
        }
        markup.close();
    }

    private static String steps(FastenerRow row) {
        String off = row.off().isEmpty() ? "" : "out " + StepNumbers.text(row.off());
        String back = row.back().isEmpty() ? "" : "in " + StepNumbers.text(row.back());
        return off.isEmpty() || back.isEmpty() ? off + back : off + ", " + back;
    }

    private void facts(FastenerRow row) {
        markup.open("p", "class", "facts");
        markup.mark(row.drive().map(DriveShape::of));
        List<String> plain = new ArrayList<>();
        plain.add(row.drive().map(Drive::label).orElse(""));
        plain.add(row.size());
        plain.add(row.head());
        plain.add(row.into());
        plain.removeIf(String::isBlank);
        markup.text(String.join(", ", plain)).text(" ");
        String tightened = (row.torque() + " " + row.order()).strip();
        markup.element("strong", tightened).text(tightened.isEmpty() ? "" : " ");
        markup.text(row.use() + (row.tray().isBlank() ? "" : ", tray " + row.tray()));
        markup.close();
    }

    private void screws(TrayCell cell, double width) {
        Optional<ScrewSide> side = side(cell);
        markup.open("div", "class", "screws");
        if (side.isEmpty()) {
            String why =
                    cell.row().size().isBlank() || cell.row().set().length().isEmpty()
                            ? "size not stated: not drawn"
                            : "not drawn";
            markup.element("p", why, "class", "soft");
        } else if (TrueSize.fits(side.get(), width)) {
            markup.own(TrueSize.screws(side.get(), cell.row().count(), width));
        } else {
            markup.element("p", "longer than the paper: not drawn", "class", "soft");
        }
        markup.close();
    }

    private void others() {
        if (!sheet.others().isEmpty()) {
            markup.open("p", "class", "others").element("strong", "Other things");
            markup.text(" " + String.join("; ", sheet.others())).close();
        }
    }
}
