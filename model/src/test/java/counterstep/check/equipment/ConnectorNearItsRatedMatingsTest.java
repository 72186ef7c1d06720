package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Latch;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class ConnectorNearItsRatedMatingsTest {
    private static Sketch rated(OptionalInt matings, int quantity) {
        return Sketch.of()
                .item(
                        new Connector(
                                new ItemId("c1"),
                                "c1 plug",
                                quantity,
                                ConnectorKind.PLUG,
                                Latch.NONE,
                                matings,
                                "",
                                Extras.NONE));
    }

    @Test
    void aFifthOfTheRatedMatingsInOneRunIsDoubted() {
        Sketch sketch = rated(OptionalInt.of(10), 1);
        assertEquals(
                List.of(
                        "connector-near-its-rated-matings [s2, s4] [c1] C1 plug: 2 matings in steps"
                                + " 2 and 4, and the maker allows 10 in all."),
                Found.in(
                        sketch.steps(
                                "disconnect c1", "reconnect c1", "disconnect c1", "reconnect c1")));
    }

    @Test
    void lessThanAFifthIsNot() {
        Sketch sketch = rated(OptionalInt.of(6), 1);
        assertEquals(List.of(), Found.in(sketch.steps("disconnect c1", "reconnect c1")));
    }

    @Test
    void likeConnectorsCountEachByItself() {
        Sketch sketch = rated(OptionalInt.of(6), 4);
        assertEquals(List.of(), Found.in(sketch.steps("disconnect c1", "reconnect c1")));
    }

    @Test
    void withoutARatingNothingIsKnown() {
        Sketch sketch = rated(OptionalInt.empty(), 1);
        assertEquals(List.of(), Found.in(sketch.steps("disconnect c1", "reconnect c1")));
    }

    @Test
    void whatStaysClosedIsNotWorn() {
        assertEquals(List.of(), Found.in(rated(OptionalInt.of(1), 1)));
    }
}
