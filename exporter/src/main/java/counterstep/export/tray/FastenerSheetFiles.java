package counterstep.export.tray;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.html.Rules;
import counterstep.export.pdf.SheetFiles;
import counterstep.store.OutputFolder;
import java.nio.file.Path;
import java.util.List;

/** The fastener sheet as NAME.fastener-sheet.html and NAME.fastener-sheet.pdf. */
public final class FastenerSheetFiles implements Exporter {
    private static final String KIND = "fastener-sheet";
    private static final String RULES = Rules.beside(FastenerSheetFiles.class, KIND + ".css");

    @Override
    public String id() {
        return KIND;
    }

    @Override
    public String name() {
        return "Fastener sheet, HTML and PDF";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        FastenerSheet sheet = FastenerSheet.of(print);
        return SheetFiles.write(
                print,
                folder,
                KIND,
                RULES,
                style -> FastenerSheetPage.of(sheet, style, print.paper()));
    }
}
