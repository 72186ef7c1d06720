package counterstep.find;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Procedure;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.List;
import org.junit.jupiter.api.Test;

final class StepSearchTest {
    private static final Procedure FAN = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));

    private static List<Integer> found(String words) {
        return StepSearch.in(FAN, words).stream().map(FAN::pageNumber).toList();
    }

    @Test
    void stepsAreFoundByTheItemsTheyTouchInPageOrder() {
        assertEquals(List.of(7, 11), found("cable tie"));
    }

    @Test
    void capitalsAndTheOrderOfWordsDoNotMatter() {
        assertEquals(found("cable tie"), found("TIE  Cable"));
    }

    @Test
    void everyWordHasToBeSaid() {
        assertEquals(List.of(4), found("capacitors prove"));
        assertEquals(List.of(), found("capacitors zebra"));
    }

    @Test
    void aNumberLeadsToItsStepFirst() {
        assertEquals(9, found("9").get(0));
    }

    @Test
    void aDriveIsFoundOnTheScrewsThatHaveIt() {
        assertEquals(List.of(3, 12), found("PH 1"));
    }

    @Test
    void noWordsFindNothing() {
        assertEquals(List.of(), found("  "));
    }
}
