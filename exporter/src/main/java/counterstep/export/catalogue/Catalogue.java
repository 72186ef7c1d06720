package counterstep.export.catalogue;

import counterstep.export.Exporter;
import counterstep.export.bench.BenchSheetFiles;
import counterstep.export.dita.DitaTask;
import counterstep.export.html.HtmlGuide;
import counterstep.export.markdown.MarkdownGuide;
import counterstep.export.pdf.PdfGuide;
import counterstep.export.report.ReviewReport;
import counterstep.export.spoken.Captions;
import counterstep.export.spoken.NarrationScript;
import counterstep.export.table.CsvTables;
import counterstep.export.tray.FastenerSheetFiles;
import java.util.List;
import java.util.Optional;

/** All exporters; the window and the command line offer what stands here. */
public final class Catalogue {
    private static final List<Exporter> ALL =
            List.of(
                    new HtmlGuide(),
                    new MarkdownGuide(),
                    new PdfGuide(),
                    new BenchSheetFiles(),
                    new FastenerSheetFiles(),
                    new CsvTables(),
                    new ReviewReport(),
                    new NarrationScript(),
                    new Captions(),
                    new DitaTask());

    private Catalogue() {}

    /** Every exporter, in the order in which people see them. */
    public static List<Exporter> all() {
        return ALL;
    }

    /** The exporter of that id, if there is one. */
    public static Optional<Exporter> find(String id) {
        return ALL.stream().filter(exporter -> exporter.id().equals(id)).findFirst();
    }
}
