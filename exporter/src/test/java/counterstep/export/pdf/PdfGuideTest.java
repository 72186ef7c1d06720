package counterstep.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.Hostile;
import counterstep.export.Paper;
import counterstep.export.PaperPages;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.export.guide.Guide;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.PhotoBlock;
import counterstep.export.guide.StepBlock;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Reads the guide's PDF with PDFBox, which has no part in its layout. */
final class PdfGuideTest {
    @TempDir private Path folder;

    private Path write(Print print) {
        return new PdfGuide().write(print, OutputFolder.at(folder)).get(0);
    }

    private static List<StepBlock> steps(Print print) {
        return Guide.of(print).phases().stream()
                .map(PhaseBlock::steps)
                .flatMap(List::stream)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void noStepIsPartedFromItsHazardsItsPhotosOrItsTotals(String name) throws Exception {
        Print print = Prints.sample(name);
        PaperPages pages = PaperPages.of(write(print));
        String letters = String.join("", pages.letters());
        int from = letters.indexOf("Prepare");
        for (StepBlock step : steps(print)) {
            int page = 0;
            for (String part : parts(step)) {
                int found = letters.indexOf(part.replaceAll("\\s", ""), from);
                assertTrue(found >= from, step.number() + " lacks or has out of order: " + part);
                from = found;
                assertTrue(page == 0 || page == pageAt(pages, found), step.number() + " is torn");
                page = pageAt(pages, found);
            }
        }
    }

    /** What of a step can be told from all else, in the order in which it is read. */
    private static List<String> parts(StepBlock step) {
        List<String> parts = new ArrayList<>();
        step.hazards().forEach(hazard -> parts.add(hazard.sentences().get(0)));
        parts.add(step.title());
        parts.addAll(step.then());
        step.photos().stream()
                .filter(photo -> !photo.seenFrom().isBlank())
                .forEach(photo -> parts.add("seen from " + photo.seenFrom()));
        return parts;
    }

    private static int pageAt(PaperPages pages, int letter) {
        int before = 0;
        for (int page = 0; page < pages.letters().size(); page++) {
            before += pages.letters().get(page).length();
            if (letter < before) {
                return page + 1;
            }
        }
        throw new AssertionError("no page has letter " + letter);
    }

    @Test
    void phasesAndTheirStepsAreBookmarks() throws Exception {
        Print print = Prints.sample(Samples.SUPPLY_FAN);
        try (PDDocument document = Loader.loadPDF(write(print).toFile())) {
            PDOutlineNode outline = document.getDocumentCatalog().getDocumentOutline();
            for (PhaseBlock phase : Guide.of(print).phases()) {
                PDOutlineItem mark = child(outline, phase.title());
                List<String> steps = new ArrayList<>();
                mark.children().forEach(step -> steps.add(step.getTitle()));
                assertEquals(phase.steps().stream().map(StepBlock::title).toList(), steps);
            }
        }
    }

    private static PDOutlineItem child(PDOutlineNode outline, String start) {
        for (PDOutlineItem mark : outline.children()) {
            if (mark.getTitle().startsWith(start)) {
                return mark;
            }
        }
        throw new AssertionError("no bookmark " + start);
    }

    @Test
    void itIsTaggedHoldsItsFontsAndSaysWhatEachPhotoShows() throws Exception {
        Print print = Prints.sample(Samples.SUPPLY_FAN);
        List<String> shown =
                steps(print).stream()
                        .flatMap(step -> step.photos().stream())
                        .map(PhotoBlock::alternative)
                        .toList();
        try (PDDocument document = Loader.loadPDF(write(print).toFile())) {
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            List<String> told = new ArrayList<>();
            alternatives(document.getDocumentCatalog().getStructureTreeRoot(), told);
            assertTrue(shown.size() > 2);
            assertTrue(told.containsAll(shown), told.toString());
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                }
            }
        }
    }

    private static void alternatives(PDStructureNode node, List<String> found) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getAlternateDescription() != null) {
                    found.add(element.getAlternateDescription());
                }
                alternatives(element, found);
            }
        }
    }

    @Test
    void thePaperIsTheOneAskedForAndPagesAreCounted() throws Exception {
        Print print = Prints.sample(Samples.SUPPLY_FAN);
        PaperPages a4 = PaperPages.of(write(print));
        assertEquals("595 x 842", a4.size());
        assertEquals("612 x 792", PaperPages.of(write(print.on(Paper.LETTER))).size());
        int last = a4.letters().size();
        assertTrue(a4.letters().get(last - 1).contains(last + "/" + last));
    }

    @Test
    void hostileWordsStayWordsAndNothingRuns() throws Exception {
        String words = "</style><script>alert(1)</script> [x](javascript:alert(2))";
        Path pdf = write(Prints.of(Hostile.saying(words)));
        assertTrue(PaperPages.of(pdf).letters().get(0).contains("<script>alert(1)</script>"));
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertEquals(null, document.getDocumentCatalog().getOpenAction());
            for (PDPage page : document.getPages()) {
                String annotations = page.getCOSObject().getDictionaryObject("Annots") + "";
                assertFalse(annotations.toLowerCase(Locale.ROOT).contains("javascript"));
            }
        }
    }
}
