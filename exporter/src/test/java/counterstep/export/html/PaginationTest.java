package counterstep.export.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.export.guide.Guide;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.StepBlock;
import counterstep.testing.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Measures printed guides. Each step, heading and table row is given an invisible word before and
 * after it, and the pages of these words are compared: what belongs together stands on one page.
 */
final class PaginationTest {
    private static final Pattern WHOLE =
            Pattern.compile("(?s)<li class=\"step.*?(?=\n<li class=\"step|</ol></section>)");
    private static final Pattern HEADING = Pattern.compile("(<h[123]>)");
    private static final Pattern ROW = Pattern.compile("(?s)<tr>.*?</tr>");

    /** What lies beyond the edge of the paper is not drawn: words at an end are moved inwards. */
    private static final String PROBES =
            ".probe { position: absolute; font-size: 1px; white-space: nowrap; }"
                    + " .probe.end { margin-left: -12px; }";

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
        PaperPages pages = printed(marked(Page.of(Guide.of(print))), paper);
        assertEquals(points, pages.size());
        List<StepBlock> steps = steps(Guide.of(print));
        for (StepBlock step : steps) {
            assertTogether(pages, "step" + step.number());
        }
        int rows = assertAllTogether(pages, "row");
        int headings = assertAllTogether(pages, "head");
        assertTrue(rows > 20 && headings > steps.size(), rows + " rows, " + headings + " headings");
    }

    @Test
    void theMeasureSeesAStepThatIsTornApart() throws Exception {
        assumeTrue(Chromium.installed().isPresent(), "not measured: chromium is not installed");
        String page = marked(Page.of(Guide.of(Prints.sample(Samples.STICK_UNIT))));
        String careless = page.replace("break-inside: avoid", "break-inside: auto");
        PaperPages pages = printed(careless, "A4");
        long torn =
                steps(Guide.of(Prints.sample(Samples.STICK_UNIT))).stream()
                        .map(step -> "step" + step.number())
                        .filter(word -> page(pages, word + "z") > page(pages, word + "a"))
                        .count();
        assertTrue(torn > 0);
    }

    private PaperPages printed(String page, String paper) throws Exception {
        String loose =
                page.replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "")
                        .replaceFirst("\n@page \\{\n", "\n@page { size: " + paper + ";\n");
        Path file = Files.writeString(folder.resolve("guide.html"), loose);
        return PaperPages.of(Chromium.print(file, folder));
    }

    private static List<StepBlock> steps(Guide guide) {
        return guide.phases().stream().map(PhaseBlock::steps).flatMap(List::stream).toList();
    }

    /** Words of almost no size at the corners of what must stay together. */
    private static String marked(String page) {
        String rows = around(page, ROW, "row");
        String steps = stepsMarked(rows);
        return headingsMarked(steps).replace("</style>", PROBES + "</style>");
    }

    private static String around(String page, Pattern what, String word) {
        Matcher found = what.matcher(page);
        StringBuilder out = new StringBuilder();
        int number = 0;
        while (found.find()) {
            number++;
            String inside =
                    found.group()
                            .replaceFirst("(<t[hd][^>]*>)", "$1" + probe(word + number + "a"))
                            .replaceFirst(
                                    "(</t[hd]>)</tr>$", probe(word + number + "z") + "$1</tr>");
            found.appendReplacement(out, Matcher.quoteReplacement(inside));
        }
        return found.appendTail(out).toString();
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
                    step.replaceFirst("(<span class=\"number\">)", "$1" + probe(word + "a"))
                            .replaceFirst("(<h3>)", "$1" + probe(word + "m"))
                            .replaceFirst(
                                    "(<p class=\"then\">.*?)</p>",
                                    "$1" + probe(word + "z") + "</p>")
                            .replaceFirst("(?s)(.*<figcaption>)", "$1" + probe(word + "f"));
            found.appendReplacement(out, Matcher.quoteReplacement(inside));
        }
        return found.appendTail(out).toString();
    }

    /** In each heading, and in the first words that follow it. */
    private static String headingsMarked(String page) {
        Matcher found = HEADING.matcher(page);
        StringBuilder out = new StringBuilder();
        int number = 0;
        int last = 0;
        while (found.find()) {
            number++;
            out.append(page, last, found.end()).append(probe("head" + number + "a"));
            int close = page.indexOf("</h", found.end());
            Matcher next =
                    Pattern.compile("<(p|t[hd]|li|span|strong)( [^>]*)?>(?=[^_<\\s])")
                            .matcher(page);
            int after = next.find(close) ? next.end() : page.length();
            out.append(page, found.end(), after);
            out.append(after == page.length() ? "" : probe("head" + number + "m"));
            last = after;
            found.region(after, page.length());
        }
        return out.append(page, last, page.length()).toString();
    }

    private static String probe(String word) {
        String kind = word.endsWith("z") ? "probe end" : "probe";
        return "<span class=\"" + kind + "\">_" + word + "_</span>";
    }

    private static int assertAllTogether(PaperPages pages, String kind) {
        int number = 1;
        while (page(pages, kind + number + "a") > 0) {
            assertTogether(pages, kind + number);
            number++;
        }
        return number - 1;
    }

    private static void assertTogether(PaperPages pages, String word) {
        List<Integer> found = new ArrayList<>();
        for (String corner : List.of("a", "m", "z", "f")) {
            int page = page(pages, word + corner);
            if (page > 0) {
                found.add(page);
            }
        }
        assertTrue(found.size() > 1, () -> word + " was not found on paper");
        assertEquals(1, found.stream().distinct().count(), () -> word + " is on pages " + found);
    }

    private static int page(PaperPages pages, String word) {
        return pages.page("_" + word + "_");
    }
}
