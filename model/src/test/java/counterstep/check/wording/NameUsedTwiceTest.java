package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class NameUsedTwiceTest {
    private static Sketch named(String one, String other) {
        return Sketch.of().item(screws("f1", one)).item(screws("f2", other));
    }

    private static FastenerSet screws(String id, String name) {
        return FastenerSet.screws(new ItemId(id), name, 2, Optional.empty());
    }

    @Test
    void twoItemsOfOneNameAreOneFinding() {
        assertEquals(
                List.of("name-used-twice [] [f1, f2] 2 items are called 'lid screws'."),
                Found.in(named("lid screws", "Lid  screws ")));
    }

    @Test
    void otherNamesAndNoNamesAreFine() {
        assertEquals(List.of(), Found.in(named("lid screws", "lid nuts")));
        assertEquals(List.of(), Found.in(named("", " ")));
    }
}
