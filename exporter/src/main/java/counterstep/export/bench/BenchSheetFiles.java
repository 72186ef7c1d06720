package counterstep.export.bench;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.html.Style;
import counterstep.export.pdf.PdfPage;
import counterstep.store.OutputFolder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The bench sheet as NAME.bench-sheet.html and NAME.bench-sheet.pdf. */
public final class BenchSheetFiles implements Exporter {
    private static final String RULES = rules();

    @Override
    public String id() {
        return "bench-sheet";
    }

    @Override
    public String name() {
        return "Bench sheet, HTML and PDF";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        BenchSheet sheet = BenchSheet.of(print);
        Style forPaper = Style.forPaper(sheet.imprint(), RULES, print.paper());
        String html = BenchSheetPage.of(sheet, forPaper);
        Style forPdf = Style.forPdf(sheet.imprint(), RULES, print.paper());
        byte[] pdf = PdfPage.of(BenchSheetPage.of(sheet, forPdf), sheet.title().title());
        String name = print.baseName() + ".bench-sheet";
        return List.of(
                folder.write(name + ".html", html.getBytes(StandardCharsets.UTF_8)),
                folder.write(name + ".pdf", pdf));
    }

    private static String rules() {
        try (InputStream in = BenchSheetFiles.class.getResourceAsStream("bench-sheet.css")) {
            if (in == null) {
                throw new IllegalStateException("not in the jar: bench-sheet.css");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
