package counterstep.export.html;

import counterstep.export.guide.Imprint;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/** The style sheet of a print: a file of its own in the jar, its fonts, the foot of the page. */
public final class Style {
    private static final List<Integer> WEIGHTS = List.of(400, 600, 700);

    private final String sheet;

    /** The sheet of a guide. */
    Style(Imprint imprint) {
        this(imprint, "");
    }

    /**
     * The sheet of a guide and more.
     *
     * @param imprint for the foot of each page
     * @param more rules of our own making that come last
     */
    public Style(Imprint imprint, String more) {
        StringBuilder all = new StringBuilder("\n");
        WEIGHTS.forEach(weight -> all.append(face(weight)));
        all.append(new String(resource("guide.css"), StandardCharsets.UTF_8));
        all.append(more);
        all.append(pageFoot(imprint));
        sheet = all.toString();
    }

    String sheet() {
        return sheet;
    }

    /** A policy under which nothing is loaded, nothing runs, and only this sheet applies. */
    String policy() {
        return "default-src 'none'; img-src data:; font-src data:; style-src 'sha256-%s'"
                .formatted(Base64.getEncoder().encodeToString(sha256(sheet)));
    }

    private static String face(int weight) {
        String font = Base64.getEncoder().encodeToString(resource("inter-" + weight + ".woff2"));
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

    private static byte[] resource(String name) {
        try (InputStream in = Style.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("not in the jar: " + name);
            }
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
