package counterstep.export.report;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The review report as NAME.review.html: one file, no script, nothing loaded from elsewhere. */
public final class ReviewReport implements Exporter {
    @Override
    public String id() {
        return "review";
    }

    @Override
    public String name() {
        return "Review report, HTML";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        byte[] page = ReportPage.of(Report.of(print)).getBytes(StandardCharsets.UTF_8);
        return List.of(folder.write(print.baseName() + ".review.html", page));
    }
}
