package counterstep.export.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Predicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The pages of a PDF of ours as pictures, for a screen. */
public final class PdfPictures {
    /** Dots per inch: more than the preview has pixels. */
    private static final float DENSITY = 100;

    private PdfPictures() {}

    /**
     * Draws page after page.
     *
     * @param pdf what an exporter wrote
     * @param more told of each page; false where no more are wanted
     */
    public static void each(byte[] pdf, Predicate<BufferedImage> more) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                if (!more.test(renderer.renderImageWithDPI(page, DENSITY, ImageType.RGB))) {
                    return;
                }
            }
        } catch (IOException impossible) {
            // These bytes never leave the memory.
            throw new UncheckedIOException(impossible);
        }
    }
}
