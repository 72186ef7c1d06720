package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class MissingFromThePartsListTest {
    private static final Part NAMED = Part.named(new ItemId("p1"), "fan");

    private static List<String> exchanged(Part part) {
        return Found.in(Sketch.of().item(part).steps("remove p1; discard p1", "fit new p1"));
    }

    @Test
    void aNewPartWithoutANumberCannotBeOrdered() {
        assertEquals(
                List.of(
                        "missing-from-the-parts-list [s2] [p1] A new fan is needed in step 2, and"
                                + " has no number to order by."),
                exchanged(PartFacts.renewed(NAMED)));
    }

    @Test
    void soIsOneThatIsFittedNewWithoutBeingMarked() {
        assertEquals(1, exchanged(NAMED).size());
    }

    @Test
    void aNumberIsEnough() {
        assertEquals(List.of(), exchanged(PartFacts.part("p1", 1, "", "", "")));
    }

    @Test
    void whatGoesBackNeedsNone() {
        assertEquals(
                List.of(), Found.in(Sketch.of().item(NAMED).steps("remove p1", "reinstall p1")));
    }
}
