package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.CanvasPoint;
import counterstep.model.Comment;
import counterstep.model.CommentId;
import counterstep.model.Extras;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FingerprintTest {
    private static final Step STEP = Step.titled(new StepId("s1"), Phase.VERIFY, "Try it");
    private static final Procedure PROCEDURE =
            Procedure.titled("fan", "Fan").draft().steps(List.of(STEP)).procedure();

    @Test
    void isSixtyFourHexadecimalDigits() {
        assertTrue(Fingerprint.of(PROCEDURE).matches("[0-9a-f]{64}"));
    }

    @Test
    void placesCommentsAndWaiversDoNotChangeIt() {
        Comment comment =
                new Comment(new CommentId("c9"), List.of(), List.of(), "", "", "why?", Extras.NONE);
        Waiver waiver =
                new Waiver("not-tried", List.of(), List.of(), "tried", "B", "", Extras.NONE);
        Procedure looked =
                PROCEDURE
                        .withStep(STEP.draft().place(Optional.of(new CanvasPoint(3, 4))).step())
                        .draft()
                        .comments(List.of(comment))
                        .waivers(List.of(waiver))
                        .procedure();
        assertEquals(Fingerprint.of(PROCEDURE), Fingerprint.of(looked));
    }

    @Test
    void anythingElseChangesIt() {
        Procedure changed = PROCEDURE.withStep(STEP.draft().text("Turn it on.").step());
        assertNotEquals(Fingerprint.of(PROCEDURE), Fingerprint.of(changed));
    }
}
