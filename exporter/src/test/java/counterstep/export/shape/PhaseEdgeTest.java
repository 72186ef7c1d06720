package counterstep.export.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Phase;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class PhaseEdgeTest {
    @ParameterizedTest
    @EnumSource(Phase.class)
    void everyEdgeStaysWithinTheHeightItIsGiven(Phase phase) {
        for (double height : new double[] {16, 58, 156}) {
            Rectangle2D bounds = PhaseEdge.of(phase, height).bounds();
            assertTrue(
                    bounds.getMinY() > -0.001 && bounds.getMaxY() < height + 0.001,
                    bounds::toString);
        }
    }

    @Test
    void reassemblyIsARowOfSquaresThatGrowsWithTheStep() {
        assertEquals(8, PhaseEdge.of(Phase.REASSEMBLY, 58).pieces().size());
        assertEquals(2, PhaseEdge.of(Phase.REASSEMBLY, 16).pieces().size());
    }

    @Test
    void prepareIsHollowAndTeardownFull() {
        assertEquals(
                false, PhaseEdge.of(Phase.PREPARE, 58).pieces().get(0).inked().contains(2, 29));
        assertEquals(
                true, PhaseEdge.of(Phase.TEARDOWN, 58).pieces().get(0).inked().contains(2, 29));
    }
}
