package counterstep.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * The letters on each page of a printed PDF, in the order in which they were drawn, without blanks.
 *
 * @param size width and height of the first page in whole points
 * @param letters page by page
 */
public record PaperPages(String size, List<String> letters) {
    /** Reads a printed PDF. */
    public static PaperPages of(Path pdf) throws IOException {
        List<String> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper reader = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                reader.setStartPage(page);
                reader.setEndPage(page);
                letters.add(reader.getText(document).replaceAll("\\s", ""));
            }
            PDRectangle paper = document.getPage(0).getMediaBox();
            String size = Math.round(paper.getWidth()) + " x " + Math.round(paper.getHeight());
            return new PaperPages(size, letters);
        }
    }

    /** The page of a word, from 1; 0 if it is nowhere. */
    public int page(String word) {
        for (int page = 0; page < letters.size(); page++) {
            if (letters.get(page).contains(word)) {
                return page + 1;
            }
        }
        return 0;
    }
}
