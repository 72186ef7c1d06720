package counterstep.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import counterstep.export.Chromium;
import counterstep.export.PaperPages;
import counterstep.export.Prints;
import counterstep.export.Probes;
import counterstep.testing.Samples;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measures printed reports: no finding, table row or heading with its first line is torn apart. */
final class ReportPaginationTest {
    private static final int FINDINGS = 40;
    private static final Pattern ENTRY =
            Pattern.compile("(?s)<li class=\"entry.*?(?=\n<li class=\"entry|</ol></section>)");

    @TempDir private Path folder;

    @ParameterizedTest
    @CsvSource({"A4, 595 x 842", "letter, 612 x 792"})
    void noFindingOfManyIsTornApart(String paper, String points) throws Exception {
        assumeTrue(Chromium.installed().isPresent(), "not measured: chromium is not installed");
        PaperPages pages =
                Probes.printed(marked(ReportPage.of(Reports.of(FINDINGS))), paper, folder);
        assertEquals(points, pages.size());
        assertTrue(pages.letters().size() > 3);
        assertEquals(FINDINGS + 1, Probes.assertAllTogether(pages, "entry"));
        assertTrue(Probes.assertAllTogether(pages, "head") > FINDINGS);
    }

    @ParameterizedTest
    @CsvSource({"A4", "letter"})
    void theReportOfTheHurriedSampleIsWholeToo(String paper) throws Exception {
        assumeTrue(Chromium.installed().isPresent(), "not measured: chromium is not installed");
        Report report = Report.of(Prints.sample(Samples.HURRIED));
        PaperPages pages = Probes.printed(marked(ReportPage.of(report)), paper, folder);
        assertEquals(report.open().size(), Probes.assertAllTogether(pages, "entry"));
        int rows = report.checks().size() + report.about().size() + report.counts().size();
        assertTrue(Probes.assertAllTogether(pages, "row") > rows);
    }

    @Test
    void theMeasureSeesAFindingThatIsTornApart() throws Exception {
        assumeTrue(Chromium.installed().isPresent(), "not measured: chromium is not installed");
        String careless =
                marked(ReportPage.of(Reports.of(FINDINGS)))
                        .replace("break-inside: avoid", "break-inside: auto");
        PaperPages pages = Probes.printed(careless, "A4", folder);
        long torn = 0;
        for (int number = 1; number <= FINDINGS; number++) {
            String word = "entry" + number;
            torn += Probes.page(pages, word + "z") > Probes.page(pages, word + "a") ? 1 : 0;
        }
        assertTrue(torn > 0);
    }

    /** Words before the number, in the heading and after the last line of each finding. */
    private static String marked(String page) {
        Matcher found = ENTRY.matcher(Probes.inRows(page));
        StringBuilder out = new StringBuilder();
        int number = 0;
        while (found.find()) {
            number++;
            String word = "entry" + number;
            String inside =
                    found.group()
                            .replaceFirst(
                                    "(<span class=\"number\">)", "$1" + Probes.probe(word + "a"))
                            .replaceFirst("(<h3>)", "$1" + Probes.probe(word + "m"))
                            .replaceFirst("</p></div></li>$", Probes.probe(word + "z") + "$0");
            found.appendReplacement(out, Matcher.quoteReplacement(inside));
        }
        return Probes.inHeadings(found.appendTail(out).toString());
    }
}
