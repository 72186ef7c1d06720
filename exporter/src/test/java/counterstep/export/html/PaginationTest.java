package counterstep.export.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import counterstep.export.Chromium;
import counterstep.export.PaperPages;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.export.Probes;
import counterstep.export.guide.Guide;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.StepBlock;
import counterstep.testing.Samples;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Measures printed guides: each step, heading and table row is given invisible words before and
 * after it.
 */
final class PaginationTest {
    private static final Pattern WHOLE =
            Pattern.compile("(?s)<li class=\"step.*?(?=\n<li class=\"step|</ol></section>)");

    @TempDir private Path folder;

    @ParameterizedTest
    @CsvSource({
        "orrin-c4-stick-unit, A4, 595 x 842",
        "orrin-c4-stick-unit, letter, 612 x 792",
        "bench-supply-fan, A4, 595 x 842",
        "bench-supply-fan, letter, 612 x 792"
    })
    void nothingThatBelongsTogetherIsTornApart(String sample, String paper, String points)
            throws Exception {
        assumeTrue(Chromium.installed().isPresent(), "not measured: chromium is not installed");
        Print print = Prints.sample(sample);
        PaperPages pages = Probes.printed(marked(HtmlGuide.page(print)), paper, folder);
        assertEquals(points, pages.size());
        List<StepBlock> steps = steps(Guide.of(print));
        for (StepBlock step : steps) {
            Probes.assertTogether(pages, "step" + step.number());
        }
        int rows = Probes.assertAllTogether(pages, "row");
        int headings = Probes.assertAllTogether(pages, "head");
        assertTrue(rows > 20 && headings > steps.size(), rows + " rows, " + headings + " headings");
    }

    @Test
    void theMeasureSeesAStepThatIsTornApart() throws Exception {
        assumeTrue(Chromium.installed().isPresent(), "not measured: chromium is not installed");
        String page = marked(HtmlGuide.page(Prints.sample(Samples.STICK_UNIT)));
        String careless = page.replace("break-inside: avoid", "break-inside: auto");
        PaperPages pages = Probes.printed(careless, "A4", folder);
        long torn =
                steps(Guide.of(Prints.sample(Samples.STICK_UNIT))).stream()
                        .map(step -> "step" + step.number())
                        .filter(
                                word ->
                                        Probes.page(pages, word + "z")
                                                > Probes.page(pages, word + "a"))
                        .count();
        assertTrue(torn > 0);
    }

    private static List<StepBlock> steps(Guide guide) {
        return guide.phases().stream().map(PhaseBlock::steps).flatMap(List::stream).toList();
    }

    /** Words of almost no size at the corners of what must stay together. */
    private static String marked(String page) {
        return Probes.inHeadings(stepsMarked(Probes.inRows(page)));
    }

    /** Before the number and the notices, and after the last line and the last photo. */
    private static String stepsMarked(String page) {
        Matcher found = WHOLE.matcher(page);
        StringBuilder out = new StringBuilder();
        while (found.find()) {
            String step = found.group();
            Matcher value = Pattern.compile("value=\"(\\d+)\"").matcher(step);
            assertTrue(value.find());
            String word = "step" + value.group(1);
            String inside =
                    step.replaceFirst("(<span class=\"number\">)", "$1" + Probes.probe(word + "a"))
                            .replaceFirst("(<h3>)", "$1" + Probes.probe(word + "m"))
                            .replaceFirst(
                                    "(<p class=\"then\">.*?)</p>",
                                    "$1" + Probes.probe(word + "z") + "</p>")
                            .replaceFirst("(?s)(.*<figcaption>)", "$1" + Probes.probe(word + "f"));
            found.appendReplacement(out, Matcher.quoteReplacement(inside));
        }
        return found.appendTail(out).toString();
    }
}
