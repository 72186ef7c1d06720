package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Selection;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A proposed link on the graph, clicked and accepted. */
final class ProposedLinkTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId BETWEEN = new StepId("s2");
    private static final LinkEnds PROPOSED = new LinkEnds(FIRST, new StepId("s3"));

    private final GraphWindow window =
            new GraphWindow(
                    Sketch.of()
                            .inAnyOrder()
                            .screws("f1", 4)
                            .part("p1", "f1", "", "")
                            .steps("remove f1", "check", "remove p1")
                            .procedure());

    @AfterEach
    void close() {
        window.close();
    }

    /** Left of the step that the link passes. */
    private Point onTheLink() {
        Rectangle passed = window.boundsOf(BETWEEN);
        double scale = passed.width / Measures.WIDTH;
        return new Point((int) (passed.x - 18 * scale), (int) passed.getCenterY());
    }

    @Test
    void aClickSelectsItAndEnterAcceptsIt() {
        window.click(onTheLink(), 1);
        assertEquals(Selection.of(PROPOSED), window.state().selection());
        assertEquals(List.of(), window.procedure().links());

        window.press(KeyEvent.VK_ENTER);

        assertEquals(
                List.of(LinkOrigin.IMPLIED),
                window.procedure().links().stream().map(Link::origin).toList());
        assertEquals(Selection.of(PROPOSED), window.state().selection());
    }

    @Test
    void deletingItLeavesTheDocumentAsItIs() {
        window.click(onTheLink(), 1);
        window.press(KeyEvent.VK_DELETE);

        assertEquals(1, window.state().generation());
    }

    @Test
    void aHiddenOneIsNotThereToClick() {
        window.showProposed(false);
        window.click(onTheLink(), 1);
        assertEquals(Selection.NONE, window.state().selection());

        window.showProposed(true);
        window.click(onTheLink(), 1);
        assertEquals(Selection.of(PROPOSED), window.state().selection());
    }
}
