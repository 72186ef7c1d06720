package counterstep.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.Networks;
import java.util.List;
import org.junit.jupiter.api.Test;

final class AcceptLinksTest {
    private static final StepId A = Networks.id("a");
    private static final StepId B = Networks.id("b");
    private static final StepId C = Networks.id("c");

    private final Procedure drawn = Networks.linked("a b c", "a-b");

    @Test
    void acceptedLinksAreOfImpliedOriginAndDrawnOnesStayDrawn() {
        Edit accept = new AcceptLinks(List.of(new LinkEnds(A, B), new LinkEnds(B, C)));
        assertEquals(
                List.of(Link.drawn(A, B), new Link(B, C, LinkOrigin.IMPLIED, Extras.NONE)),
                accept.apply(drawn).links());
    }

    @Test
    void theNameCounts() {
        assertEquals("Accept proposed link", new AcceptLinks(List.of(new LinkEnds(A, B))).name());
        assertEquals(
                "Accept 2 proposed links",
                new AcceptLinks(List.of(new LinkEnds(A, B), new LinkEnds(B, C))).name());
    }

    @Test
    void aLinkToAStepThatIsNotThereIsRefused() {
        Edit accept = new AcceptLinks(List.of(new LinkEnds(A, Networks.id("gone"))));
        assertThrows(IllegalArgumentException.class, () -> accept.apply(drawn));
    }
}
