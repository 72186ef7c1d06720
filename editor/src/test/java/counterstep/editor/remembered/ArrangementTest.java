package counterstep.editor.remembered;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ArrangementTest {
    private static final Rectangle PLACE = new Rectangle(-40, 20, 500, 300);

    private final Arrangement first =
            Arrangement.empty()
                    .with(Side.LEFT, "Items")
                    .with(Side.BELOW, "Findings", "On the bench", "Timetable");

    @Test
    void theFirstAtASideIsInFrontUntilAnotherIsChosen() {
        assertEquals(Optional.of("Findings"), first.front(Side.BELOW));
        assertEquals(Optional.of("Timetable"), first.chosen("Timetable").front(Side.BELOW));
        assertEquals(Optional.empty(), first.front(Side.RIGHT));
    }

    @Test
    void aPanelThatIsMovedStandsInFrontAtTheOtherSide() {
        Arrangement moved = first.moved("Timetable", Side.LEFT, Integer.MAX_VALUE);
        assertEquals(List.of("Items", "Timetable"), moved.at(Side.LEFT));
        assertEquals(Optional.of("Timetable"), moved.front(Side.LEFT));
        assertEquals(List.of("Findings", "On the bench"), moved.at(Side.BELOW));
    }

    @Test
    void aTabMovesWithinItsSide() {
        assertEquals(
                List.of("Timetable", "Findings", "On the bench"),
                first.moved("Timetable", Side.BELOW, 0).at(Side.BELOW));
        assertEquals(
                List.of("On the bench", "Findings", "Timetable"),
                first.moved("Findings", Side.BELOW, 1).at(Side.BELOW));
    }

    @Test
    void aPanelThatIsHiddenComesBackToItsPlace() {
        Arrangement hidden = first.chosen("On the bench").hidden("On the bench");
        assertEquals(List.of("Findings", "Timetable"), hidden.at(Side.BELOW));
        assertEquals(Optional.of("Findings"), hidden.front(Side.BELOW));
        Arrangement shown = hidden.shown("On the bench");
        assertEquals(first.at(Side.BELOW), shown.at(Side.BELOW));
        assertEquals(Optional.of("On the bench"), shown.front(Side.BELOW));
    }

    @Test
    void aFloatingPanelThatIsHiddenFloatsAgain() {
        Arrangement floating = first.floated("Timetable", PLACE);
        assertEquals(List.of("Findings", "On the bench"), floating.at(Side.BELOW));
        Arrangement hidden = floating.hidden("Timetable");
        assertEquals(List.of(), hidden.floating());
        assertEquals(Optional.of(PLACE), hidden.shown("Timetable").floating().get(0).window());
    }

    @Test
    void aPanelThatIsNotKnownChangesNothing() {
        assertEquals(first, first.moved("Photos", Side.LEFT, 0));
        assertEquals(first, first.hidden("Photos"));
        assertEquals(first, first.shown("Photos"));
        assertEquals(first, first.floated("Photos", PLACE));
    }

    @Test
    void noPanelStandsInTwoPlaces() {
        assertThrows(IllegalArgumentException.class, () -> first.with(Side.RIGHT, "Items"));
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        Arrangement arrangement =
                first.floated("Timetable", PLACE)
                        .chosen("On the bench")
                        .hidden("Items")
                        .with(Side.RIGHT, "Details");
        assertEquals(Optional.of(arrangement), Arrangement.ofText(arrangement.text()));
        assertEquals(
                "left hidden: Items|below: Findings|below front: On the bench"
                        + "|below at -40 20 500 300: Timetable|right: Details",
                arrangement.text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "|",
                "left",
                "left: ",
                "middle: Items",
                "left: Items|",
                "left: Items|right: Items",
                "left at 1 2 3: Items",
                "left at 1 2 300 99999999999: Items",
                "left front front: Items",
                "<docking/>"
            })
    void whatIsDamagedIsNoArrangement(String text) {
        assertEquals(Optional.empty(), Arrangement.ofText(text));
    }

    @Test
    void panelsThatCameOrWentSinceItWasWrittenAreMended() {
        Arrangement older =
                Arrangement.empty().with(Side.RIGHT, "Findings", "Gone").with(Side.LEFT, "Items");
        Arrangement mended = older.completedBy(first);
        assertEquals(List.of("Findings"), mended.at(Side.RIGHT));
        assertEquals(List.of("Items"), mended.at(Side.LEFT));
        assertEquals(List.of("On the bench", "Timetable"), mended.at(Side.BELOW));
        assertEquals(Optional.empty(), mended.of("Gone"));
    }
}
