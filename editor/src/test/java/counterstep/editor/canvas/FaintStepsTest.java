package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.AlphaComposite;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class FaintStepsTest {
    private static final StepId ONE = new StepId("s1");
    private static final StepId OTHER = new StepId("s2");

    private final FaintSteps faint = new FaintSteps();
    private final Graphics2D graphics =
            new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics();

    private Composite of(Object id) {
        return faint.ground(graphics, id).getComposite();
    }

    @Test
    void allIsDrawnInFullAsLongAsNoStepsAreNamed() {
        assertEquals(AlphaComposite.SrcOver, of(ONE));
        faint.showOnly(Optional.of(Set.of(OTHER)));
        faint.showOnly(Optional.empty());
        assertEquals(AlphaComposite.SrcOver, of(ONE));
    }

    @Test
    void otherStepsAndLinksThatLeadThereAreDrawnFaint() {
        faint.showOnly(Optional.of(Set.of(ONE)));

        assertEquals(AlphaComposite.SrcOver, of(ONE));
        assertEquals(faintness(OTHER), faintness(new LinkEnds(ONE, OTHER)));
        assertTrue(faintness(OTHER) < 0.5);
        assertSame(AlphaComposite.SrcOver, graphics.getComposite(), "what was handed in stays");
    }

    private float faintness(Object id) {
        return ((AlphaComposite) of(id)).getAlpha();
    }
}
