package counterstep.export.pdf;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.guide.Imprint;
import counterstep.export.html.HtmlGuide;
import counterstep.store.OutputFolder;
import java.nio.file.Path;
import java.util.List;

/** The guide as NAME.guide.pdf, laid out for the paper of the print. */
public final class PdfGuide implements Exporter {
    @Override
    public String id() {
        return "pdf";
    }

    @Override
    public String name() {
        return "Guide, PDF";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        byte[] pdf = PdfPage.of(HtmlGuide.pageForPdf(print), Imprint.of(print).name());
        return List.of(folder.write(print.baseName() + ".guide.pdf", pdf));
    }
}
