package counterstep.export.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.Hostile;
import counterstep.export.NuValidator;
import counterstep.export.Paper;
import counterstep.export.PaperPages;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.ProcedureDraft;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.ThreadKind;
import counterstep.model.TitleBlock;
import counterstep.model.Verb;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.awt.Rectangle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class FastenerSheetFilesTest {
    /** How far a drawing on paper may be from its true size, in mm. */
    private static final double TOLERANCE = 0.5;

    @TempDir private Path folder;

    private Path write(Print print, int which) {
        return new FastenerSheetFiles().write(print, OutputFolder.at(folder)).get(which);
    }

    private static FastenerSet screws(String id, int count, double diameter, double length) {
        return new FastenerSet(
                new ItemId(id),
                "screws " + id,
                count,
                FastenerForm.SCREW,
                Optional.of(new Drive(DriveKind.HEXALOBULAR, "30")),
                Head.CYLINDER,
                Optional.of(new ScrewThread(ThreadKind.METRIC, diameter, OptionalDouble.empty())),
                OptionalDouble.of(length),
                "8.8",
                Seat.METAL,
                Optional.empty(),
                "",
                "",
                false,
                false,
                "",
                "",
                Extras.NONE);
    }

    private static Print taking(FastenerSet... sets) {
        List<Step> steps = new ArrayList<>();
        for (FastenerSet set : sets) {
            steps.add(
                    Step.titled(new StepId("s" + set.id().value()), Phase.TEARDOWN, "Out")
                            .draft()
                            .actions(List.of(Action.of(Verb.REMOVE, set.id(), set.quantity())))
                            .step());
        }
        return Prints.of(
                new ProcedureDraft("one", TitleBlock.titled("A sheet"))
                        .items(Stream.of(sets).map(Item.class::cast).toList())
                        .steps(steps)
                        .procedure());
    }

    private static List<TrayCell> cells(Print print) {
        return FastenerSheet.of(print).cells();
    }

    /** The screw of 60 mm stands across both columns of cells. */
    @ParameterizedTest
    @CsvSource({"6, 40", "2, 6", "1.6, 3.5", "8, 60", "10, 120"})
    void aScrewIsPrintedAtItsTrueSize(double diameter, double length) throws Exception {
        Inked inked = Inked.page(write(taking(screws("f1", 1, diameter, length)), 1), 0);
        double whole = diameter + length; // a cylinder head is as high as the thread is wide
        double wide = 1.6 * diameter;
        assertTrue(
                inked.shapes().stream()
                        .anyMatch(
                                each ->
                                        near(each.getWidth(), whole)
                                                && near(each.getHeight(), wide)),
                () -> "none of " + inked.shapes());
    }

    private static boolean near(double drawn, double wanted) {
        return Math.abs(drawn - wanted) <= TOLERANCE;
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theCheckLineMeasuresAHundredMillimetres(Paper paper) throws Exception {
        Inked inked = Inked.page(write(Prints.sample(Samples.SUPPLY_FAN).on(paper), 1), 0);
        assertTrue(
                inked.shapes().stream()
                        .anyMatch(each -> near(each.getWidth(), 100) && each.getHeight() < 6),
                () -> "none of " + inked.shapes());
    }

    @Test
    void noScrewIsDrawnWhoseSizeIsUnknownOrBeyondThePaper() throws Exception {
        FastenerSet unknown =
                FastenerSet.screws(new ItemId("f1"), "mystery screws", 2, Optional.empty());
        String page = Files.readString(write(taking(unknown, screws("f2", 1, 8, 250)), 0));
        assertTrue(page.contains("size not stated: not drawn"));
        assertTrue(page.contains("longer than the paper: not drawn"));
    }

    @Test
    void lookAlikesAreToldApartByTheirLength() {
        Print print =
                taking(
                        screws("f1", 1, 2, 6),
                        screws("f2", 1, 2, 8),
                        screws("f3", 1, 2, 6),
                        screws("f4", 1, 2, 8.5),
                        screws("f5", 1, 3, 6));
        List<TrayCell> cells = cells(print);
        assertEquals(List.of("look-alike of B: 2 mm shorter", "same as C"), cells.get(0).alike());
        assertEquals(
                List.of("look-alike of A, C: 2 mm longer", "look-alike of D: 0.5 mm shorter"),
                cells.get(1).alike());
        assertEquals(List.of(), cells.get(4).alike());
    }

    @Test
    void theMapShowsTheLetterOfEachSetThatACalloutPointsAt() {
        FastenerSheet sheet = FastenerSheet.of(Prints.sample(Samples.STICK_UNIT));
        HoleMap map = sheet.map().orElseThrow();
        String brace =
                sheet.cells().stream()
                        .filter(cell -> cell.row().name().equals("brace screws"))
                        .findFirst()
                        .orElseThrow()
                        .letter();
        assertTrue(map.places().stream().anyMatch(place -> place.letter().equals(brace)));
        assertTrue(
                map.places().stream()
                        .allMatch(
                                place ->
                                        place.x() >= 0
                                                && place.x() <= 1
                                                && place.y() >= 0
                                                && place.y() <= 1));
    }

    @Test
    void afterTheLetterZComeDoubleLetters() {
        assertEquals("A", FastenerSheet.letter(0));
        assertEquals("Z", FastenerSheet.letter(25));
        assertEquals("AA", FastenerSheet.letter(26));
        assertEquals("AZ", FastenerSheet.letter(51));
        assertEquals("BA", FastenerSheet.letter(52));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void aValidatorFindsNothingWrongWithThePage(String name) throws Exception {
        assertEquals("", NuValidator.complaints(Files.readString(write(Prints.sample(name), 0))));
    }

    @Test
    void hostileWordsStayWords() throws Exception {
        String page =
                Files.readString(
                        write(Prints.of(Hostile.saying("</style><script>alert(1)</script>")), 0));
        assertEquals("", NuValidator.complaints(page));
        assertFalse(page.contains("<script"));
    }

    @Test
    void everySetOfASampleHasItsCellOnPaper() throws Exception {
        Print print = Prints.sample(Samples.STICK_UNIT);
        String letters = String.join("", PaperPages.of(write(print, 1)).letters());
        for (TrayCell cell : cells(print)) {
            String head = cell.letter() + cell.row().count() + "×" + cell.row().name();
            assertTrue(letters.contains(head.replaceAll("\\s", "")), head);
        }
    }

    /** Keeps the test honest: what is measured is ink, and there is some. */
    @Test
    void theMeasureFindsAShapeOfKnownSize() {
        Inked inked = Inked.of(Inked.drawn(new Rectangle(100, 50, 300, 40)));
        assertEquals(1, inked.shapes().size());
        assertEquals(30, inked.shapes().get(0).getWidth(), 0.01);
        assertEquals(4, inked.shapes().get(0).getHeight(), 0.01);
    }
}
