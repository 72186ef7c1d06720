package counterstep.export.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import counterstep.export.html.PaperPage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.w3c.dom.Document;

/**
 * Lays out a page of HTML and writes it as a PDF that is tagged for reading aids, has bookmarks for
 * its headings and holds its fonts. Nothing is loaded from anywhere: photos come with the page.
 */
public final class PdfPage {
    private static final List<Integer> WEIGHTS = List.of(400, 600, 700);

    /** Held, else its level is forgotten; it speaks of fonts of the system, which are not used. */
    private static final Logger WRITER = Logger.getLogger("org.apache.pdfbox");

    private PdfPage() {}

    /**
     * The PDF of a page.
     *
     * @param page HTML whose style sheet names a paper and does without grids and columns
     * @param subject one line on what it is, for lists of files
     */
    public static byte[] of(PaperPage page, String subject) {
        XRLog.setLoggingEnabled(false);
        WRITER.setLevel(Level.SEVERE);
        Document document = W3CDom.convert(Jsoup.parse(page.html()));
        Outline.addTo(document, subject);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUriResolver((base, uri) -> page.photos().containsKey(uri) ? uri : null);
        builder.useProtocolsStreamImplementation(
                address -> held(page.photos().get(address)), "photo");
        WEIGHTS.forEach(
                weight ->
                        builder.useFont(
                                () -> font(weight), "Inter", weight, FontStyle.NORMAL, true));
        builder.withProducer("Counterstep");
        builder.withW3cDocument(document, null);
        builder.toStream(out);
        try {
            builder.run();
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return out.toByteArray();
    }

    /** What lies in memory, for the PDF maker. */
    private static FSStream held(byte[] bytes) {
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return new ByteArrayInputStream(bytes);
            }

            @Override
            public Reader getReader() {
                return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
            }
        };
    }

    private static InputStream font(int weight) {
        String name = "inter-" + weight + ".ttf";
        InputStream in = PdfPage.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("not in the jar: " + name);
        }
        return in;
    }
}
