package counterstep.export.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.Hostile;
import counterstep.export.NuValidator;
import counterstep.export.Paper;
import counterstep.export.PaperPages;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.ledger.Totals;
import counterstep.model.Step;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class BenchSheetFilesTest {
    @TempDir private Path folder;

    private static List<SheetRow.Work> steps(BenchSheet sheet) {
        return sheet.rows().stream()
                .filter(SheetRow.Work.class::isInstance)
                .map(SheetRow.Work.class::cast)
                .toList();
    }

    private static List<String> counts(BenchSheet sheet) {
        return sheet.rows().stream()
                .filter(SheetRow.Count.class::isInstance)
                .map(row -> ((SheetRow.Count) row).when())
                .toList();
    }

    private static SheetRow.Work step(BenchSheet sheet, String title) {
        return steps(sheet).stream()
                .filter(work -> work.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private Path write(Print print, int which) {
        return new BenchSheetFiles().write(print, OutputFolder.at(folder)).get(which);
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void everyStepThatActsHasARowWithTheLedgersTotals(String name) {
        Print print = Prints.sample(name);
        List<Step> acting =
                print.procedure().steps().stream()
                        .filter(step -> !step.actions().isEmpty())
                        .toList();
        List<SheetRow.Work> rows = steps(BenchSheet.of(print));
        assertEquals(acting.size(), rows.size());
        for (int place = 0; place < rows.size(); place++) {
            Step step = acting.get(place);
            assertEquals(print.facts().index().number(step.id()), rows.get(place).number());
            assertEquals(print.facts().ledger().totals(step.id()), rows.get(place).totals());
        }
    }

    @Test
    void theColumnsOfACompleteProcedureEndAtNought() {
        BenchSheet sheet = BenchSheet.of(Prints.sample(Samples.STICK_UNIT));
        List<SheetRow.Work> rows = steps(sheet);
        assertEquals(Totals.NOTHING, rows.get(rows.size() - 1).totals());
        assertTrue(sheet.closing().startsWith("At the end all three columns read 0."));
        assertEquals("", sheet.title().unfinished());
    }

    @Test
    void anIncompleteOneSaysThatNobodyMayWorkByIt() {
        BenchSheet sheet = BenchSheet.of(Prints.sample(Samples.HURRIED));
        assertTrue(sheet.closing().startsWith("Not complete"));
        assertTrue(sheet.title().unfinished().contains("Do not work by this print"));
    }

    @Test
    void theMatIsCountedAfterTeardownAndBeforeACoverGoesOn() {
        BenchSheet sheet = BenchSheet.of(Prints.sample(Samples.STICK_UNIT));
        assertEquals("end of teardown", counts(sheet).get(0));
        int shell = sheet.rows().indexOf(step(sheet, "Back shell on"));
        assertEquals(new SheetRow.Count("before the back shell"), sheet.rows().get(shell - 1));
    }

    @Test
    void aNumberStandsAloneOnlyWhereTheTitleNamesAllThatIsCounted() {
        BenchSheet sheet = BenchSheet.of(Prints.sample(Samples.SUPPLY_FAN));
        assertEquals(
                List.of(Note.of("1 cable tie"), Note.of("1 fan lead")),
                step(sheet, "Fan lead off").notes());
        BenchSheet other = BenchSheet.of(Prints.sample(Samples.STICK_UNIT));
        assertEquals(List.of(Note.of("1")), step(other, "Plug the cell lead in").notes());
    }

    @Test
    void theLineToWriteOnStaysWithTheWordBeforeIt() throws Exception {
        String page = Files.readString(write(Prints.sample(Samples.SUPPLY_FAN), 0));
        assertTrue(
                page.contains(
                        "; <span class=\"fill\">initials <span class=\"blank\"></span></span>"));
    }

    @Test
    void valuesHaveALineToWriteOnAndSafetyStepsWantInitials() {
        BenchSheet sheet = BenchSheet.of(Prints.sample(Samples.STICK_UNIT));
        assertEquals(
                List.of(Note.toFill("as noted ± 0.1 mm, got", "mm")),
                step(sheet, "Set the spring height").notes());
        assertTrue(
                step(sheet, "Tag the old stick unit")
                        .notes()
                        .contains(Note.toFill("old left stick unit, serial", "")));
        assertTrue(
                step(sheet, "Unplug the cell lead").notes().contains(Note.toFill("initials", "")));
        assertFalse(
                step(sheet, "Short shell screws out")
                        .notes()
                        .contains(Note.toFill("initials", "")));
    }

    @Test
    void screwsAreCountedWithTheirTrayAndGoBackWithTheirTorque() {
        BenchSheet sheet = BenchSheet.of(Prints.sample(Samples.STICK_UNIT));
        assertEquals(List.of(Note.of("6, tray A")), step(sheet, "Short shell screws out").notes());
        assertEquals(
                List.of(Note.of("5 × 8 cN·m, crosswise")), step(sheet, "Board screws in").notes());
        assertEquals(
                List.of(Note.of("3 plate screws, finger-tight")),
                step(sheet, "Stick plate on, screws finger-tight").notes());
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void aValidatorFindsNothingWrongWithThePage(String name) throws Exception {
        String page = Files.readString(write(Prints.sample(name), 0));
        assertEquals("", NuValidator.complaints(page));
    }

    @Test
    void hostileWordsStayWords() throws Exception {
        Print print = Prints.of(Hostile.saying("</style><script>alert(1)</script>\u0007"));
        String page = Files.readString(write(print, 0));
        assertEquals("", NuValidator.complaints(page));
        assertFalse(page.contains("<script"));
        assertTrue(PaperPages.of(write(print, 1)).letters().get(0).contains("alert(1)"));
    }

    @Test
    void thePdfHoldsEveryRowInOrderAndItsFontsAndIsTagged() throws Exception {
        Print print = Prints.sample(Samples.SUPPLY_FAN);
        Path pdf = write(print, 1);
        String letters = String.join("", PaperPages.of(pdf).letters());
        int from = 0;
        for (SheetRow.Work work : steps(BenchSheet.of(print))) {
            String row = (work.number() + work.title()).replaceAll("\\s", "");
            int found = letters.indexOf(row, from);
            assertTrue(found >= from, row);
            from = found;
        }
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertTrue(document.getDocumentInformation().getTitle().startsWith("Bench sheet: "));
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                }
            }
        }
    }

    @Test
    void thePaperIsTheOneAskedFor() throws Exception {
        Print print = Prints.sample(Samples.SUPPLY_FAN);
        assertEquals("595 x 842", PaperPages.of(write(print, 1)).size());
        assertEquals("612 x 792", PaperPages.of(write(print.on(Paper.LETTER), 1)).size());
    }
}
