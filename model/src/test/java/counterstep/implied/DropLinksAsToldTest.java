package counterstep.implied;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class DropLinksAsToldTest {
    private static final StepId FIRST = new StepId("s1");

    /** A chain as told of two clips and a plug, with one link drawn by hand beside it. */
    private static Procedure told() {
        Procedure procedure =
                Sketch.of()
                        .clips("k1", 2)
                        .connectors("c1", 1)
                        .steps("unclip k1", "disconnect c1", "reconnect c1", "clip k1")
                        .link(1, 3)
                        .procedure();
        List<Link> links = new ArrayList<>(procedure.links());
        for (int step = 1; step < 4; step++) {
            links.add(
                    new Link(
                            new StepId("s" + step),
                            new StepId("s" + (step + 1)),
                            LinkOrigin.AS_TOLD,
                            Extras.NONE));
        }
        return procedure.draft().links(links).procedure();
    }

    @Test
    void theChainGivesWayToWhatTheItemsImplyAndDrawnLinksStay() {
        assertEquals(
                List.of("s1 s3 drawn", "s1 s4 implied", "s2 s3 implied"),
                new DropLinksAsTold()
                        .apply(told()).links().stream()
                                .map(
                                        link ->
                                                "%s %s %s"
                                                        .formatted(
                                                                link.before(),
                                                                link.after(),
                                                                link.origin().word()))
                                .sorted()
                                .toList());
    }

    @Test
    void aDocumentWithoutLinksAsToldStaysAsItIs() {
        Procedure after = new DropLinksAsTold().apply(told());
        assertTrue(DropLinksAsTold.applies(told()));
        assertFalse(DropLinksAsTold.applies(after));
        assertEquals(after, new DropLinksAsTold().apply(after));
        assertEquals(FIRST, after.steps().get(0).id());
    }
}
