package counterstep.export.html;

import counterstep.export.Paper;
import counterstep.export.guide.Imprint;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/** The style sheet of a print: a file of its own in the jar, its fonts, the foot of the page. */
public final class Style {
    private static final List<Integer> WEIGHTS = List.of(400, 600, 700);

    private final String sheet;

    private Style(String sheet) {
        this.sheet = sheet;
    }

    /** The sheet of a guide. */
    static Style ofGuide(Imprint imprint) {
        return ofGuide(imprint, "");
    }

    /**
     * The sheet of a guide and more.
     *
     * @param imprint for the foot of each page
     * @param more rules of our own making that come last
     */
    public static Style ofGuide(Imprint imprint, String more) {
        return of(imprint, Rules.beside(Style.class, "guide.css") + more);
    }

    /**
     * A sheet of other rules, with our fonts inside, for one paper.
     *
     * @param imprint for the foot of each page
     * @param rules of our own making
     */
    public static Style forPaper(Imprint imprint, String rules, Paper paper) {
        return of(imprint, rules + "@page { size: " + paper.css() + "; }\n");
    }

    private static Style of(Imprint imprint, String rules) {
        StringBuilder all = new StringBuilder("\n");
        WEIGHTS.forEach(weight -> all.append(face(weight)));
        return new Style(all.append(rules).append(pageFoot(imprint)).toString());
    }

    /**
     * A sheet for the PDF maker, which has the fonts already and is told the paper.
     *
     * @param imprint for the foot of each page
     * @param rules of our own making, without grids, columns and custom properties
     */
    public static Style forPdf(Imprint imprint, String rules, Paper paper) {
        return new Style("\n" + rules + pageFootForPdf(imprint, paper));
    }

    String sheet() {
        return sheet;
    }

    /** A policy under which nothing is loaded, nothing runs, and only this sheet applies. */
    String policy() {
        return "default-src 'none'; img-src data:; font-src data:; style-src " + hash(sheet);
    }

    /** What a policy calls an inline sheet or script. */
    static String hash(String content) {
        return "'sha256-" + Base64.getEncoder().encodeToString(sha256(content)) + "'";
    }

    private static String face(int weight) {
        String font =
                Base64.getEncoder()
                        .encodeToString(Rules.bytes(Style.class, "inter-" + weight + ".woff2"));
        return "@font-face{font-family:Inter;font-weight:%d;src:url(data:font/woff2;base64,%s)}\n"
                .formatted(weight, font);
    }

    private static String pageFoot(Imprint imprint) {
        return """
        @page {
          @bottom-left { content: "%s     fingerprint %s"; }
          @bottom-right { content: counter(page) " / " counter(pages); }
        }
        """
                .formatted(
                        inQuotes(shortened(imprint.name())), inQuotes(imprint.shortFingerprint()));
    }

    /** The PDF maker does not join the rules of one margin box: all of them stand together. */
    private static String pageFootForPdf(Imprint imprint, Paper paper) {
        String look =
                "vertical-align: top; padding-top: 3mm; border-top: 1px solid #909090;"
                        + " font-family: Inter; font-size: 8pt; color: #565C64;";
        return """
        @page {
          size: %s; margin: 13mm 14mm 17mm;
          @bottom-left { %s text-align: left; content: "%s\\a0 \\a0 \\a0 fingerprint %s"; }
          @bottom-right { %s text-align: right; content: counter(page) " / " counter(pages); }
        }
        """
                .formatted(
                        paper.css(),
                        look,
                        inQuotes(shortened(imprint.name())),
                        inQuotes(imprint.shortFingerprint()),
                        look);
    }

    private static String shortened(String name) {
        return name.codePointCount(0, name.length()) <= 72
                ? name
                : name.substring(0, name.offsetByCodePoints(0, 70)).strip() + " …";
    }

    /** Text for a quoted string of a style sheet: all but letters, digits and spaces as numbers. */
    static String inQuotes(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints()
                .filter(point -> !Character.isISOControl(point))
                .filter(point -> Character.getType(point) != Character.SURROGATE)
                .forEach(
                        point -> {
                            if (point < 128 && (Character.isLetterOrDigit(point) || point == ' ')) {
                                safe.appendCodePoint(point);
                            } else {
                                safe.append("\\%06x ".formatted(point));
                            }
                        });
        return safe.toString();
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException never) {
            throw new AssertionError("every Java platform has SHA-256", never);
        }
    }
}
