package counterstep.export.report;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * The review report as NAME.review.html, one file without script or anything loaded from elsewhere,
 * and as NAME.review.md.
 */
public final class ReviewReport implements Exporter {
    @Override
    public String id() {
        return "review";
    }

    @Override
    public String name() {
        return "Review report, HTML and Markdown";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        Report report = Report.of(print);
        String name = print.baseName() + ".review";
        return List.of(
                folder.write(
                        name + ".html", ReportPage.of(report).getBytes(StandardCharsets.UTF_8)),
                folder.write(name + ".md", ReportText.of(report).getBytes(StandardCharsets.UTF_8)));
    }
}
