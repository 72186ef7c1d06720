package counterstep.export.bench;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.html.Rules;
import counterstep.export.pdf.SheetFiles;
import counterstep.store.OutputFolder;
import java.nio.file.Path;
import java.util.List;

/** The bench sheet as NAME.bench-sheet.html and NAME.bench-sheet.pdf. */
public final class BenchSheetFiles implements Exporter {
    private static final String KIND = "bench-sheet";
    private static final String RULES = Rules.beside(BenchSheetFiles.class, KIND + ".css");

    @Override
    public String id() {
        return KIND;
    }

    @Override
    public String name() {
        return "Bench sheet, HTML and PDF";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        BenchSheet sheet = BenchSheet.of(print);
        return SheetFiles.write(
                print, folder, KIND, RULES, style -> BenchSheetPage.of(sheet, style));
    }
}
