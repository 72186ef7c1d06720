package counterstep.export.pdf;

import counterstep.export.Print;
import counterstep.export.guide.Imprint;
import counterstep.export.html.PaperPage;
import counterstep.export.html.Style;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/** A sheet for the bench as two files, one for browsers and one for printers. */
public final class SheetFiles {
    private SheetFiles() {}

    /**
     * Writes NAME.KIND.html and NAME.KIND.pdf.
     *
     * @param kind 'bench-sheet'
     * @param rules of the sheet's style, without grids, columns and custom properties
     * @param page the page in a style
     */
    public static List<Path> write(
            Print print,
            OutputFolder folder,
            String kind,
            String rules,
            Function<Style, String> page) {
        Imprint imprint = Imprint.of(print);
        String html = page.apply(Style.forPaper(imprint, rules, print.paper()));
        String forPdf = page.apply(Style.forPdf(imprint, rules, print.paper()));
        String name = print.baseName() + "." + kind;
        return List.of(
                folder.write(name + ".html", html.getBytes(StandardCharsets.UTF_8)),
                folder.write(name + ".pdf", PdfPage.of(PaperPage.without(forPdf), imprint.name())));
    }
}
