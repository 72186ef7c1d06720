package counterstep.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Invisible words put into a page before it is printed. The pages of these words are compared: what
 * belongs together stands on one page.
 */
public final class Probes {
    private static final Pattern HEADING = Pattern.compile("(<h[123]>)");
    private static final Pattern ROW = Pattern.compile("(?s)<tr[ >].*?</tr>");

    /** What lies beyond the edge of the paper is not drawn: words at an end are moved inwards. */
    private static final String STYLE =
            ".probe { position: absolute; font-size: 1px; white-space: nowrap; }"
                    + " .probe.end { margin-left: -12px; }";

    private Probes() {}

    /** The markup of a word; those that end in z stand at an end. */
    public static String probe(String word) {
        String kind = word.endsWith("z") ? "probe end" : "probe";
        return "<span class=\"" + kind + "\">_" + word + "_</span>";
    }

    /** Prints a page with words in it on a paper of that name. */
    public static PaperPages printed(String page, String paper, Path folder) throws Exception {
        String loose =
                page.replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "")
                        .replaceFirst("\n@page \\{\n", "\n@page { size: " + paper + ";\n")
                        .replace("</style>", STYLE + "</style>");
        Path file = Files.writeString(folder.resolve("page.html"), loose);
        return PaperPages.of(Chromium.print(file, folder));
    }

    /** Words 'row1a', 'row1z' in the first and the last cell of each row. */
    public static String inRows(String page) {
        Matcher found = ROW.matcher(page);
        StringBuilder out = new StringBuilder();
        int number = 0;
        while (found.find()) {
            number++;
            String inside =
                    found.group()
                            .replaceFirst("(<t[hd][^>]*>)", "$1" + probe("row" + number + "a"))
                            .replaceFirst(
                                    "(</t[hd]>)</tr>$", probe("row" + number + "z") + "$1</tr>");
            found.appendReplacement(out, Matcher.quoteReplacement(inside));
        }
        return found.appendTail(out).toString();
    }

    /** Words 'head1a', 'head1m' in each heading, and in the first words that follow it. */
    public static String inHeadings(String page) {
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

    /** Asserts it of all words of a kind, and says how many there are. */
    public static int assertAllTogether(PaperPages pages, String kind) {
        int number = 1;
        while (page(pages, kind + number + "a") > 0) {
            assertTogether(pages, kind + number);
            number++;
        }
        return number - 1;
    }

    /** Asserts that the corners of one thing (a, m, z, f) are on one page. */
    public static void assertTogether(PaperPages pages, String word) {
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

    /** The page of a word, from 1; 0 if it is nowhere. */
    public static int page(PaperPages pages, String word) {
        return pages.page("_" + word + "_");
    }
}
