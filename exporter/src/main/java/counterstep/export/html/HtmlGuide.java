package counterstep.export.html;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.guide.Guide;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * The guide as NAME.guide.html: one file, nothing loaded from elsewhere, whole without its script.
 */
public final class HtmlGuide implements Exporter {
    private static final String PDF_RULES = Rules.beside(HtmlGuide.class, "guide-pdf.css");

    @Override
    public String id() {
        return "html";
    }

    @Override
    public String name() {
        return "Guide, HTML";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        byte[] page = page(print).getBytes(StandardCharsets.UTF_8);
        return List.of(folder.write(print.baseName() + ".guide.html", page));
    }

    /** The page itself, to be shown and not written. */
    public static String page(Print print) {
        Guide guide = Guide.of(print);
        return Page.forBrowser(guide, Style.ofGuide(guide.imprint()));
    }

    /** The page for the PDF maker, on the paper of the print. */
    public static PaperPage pageForPdf(Print print) {
        Guide guide = Guide.of(print);
        Style style = Style.forPdf(guide.imprint(), PDF_RULES, print.paper());
        return Page.forPaper(guide, style);
    }
}
