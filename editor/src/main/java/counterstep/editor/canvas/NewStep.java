package counterstep.editor.canvas;

import counterstep.edit.AddStep;
import counterstep.edit.FreshIds;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a new step goes in page order when it is asked for at a place of the drawing: teardown runs
 * down on the left, so it follows the step above; reassembly runs up on the right, so it follows
 * the step below. Its place is then the layout's, so that the mirror stays one.
 */
final class NewStep {
    private NewStep() {}

    /**
     * A step of no title yet at a point of the drawing. It is linked to none: who chooses the place
     * chooses the order by drawing it.
     */
    static AddStep at(Procedure procedure, Scene scene, Point2D point) {
        boolean left = point.getX() < (Measures.WIDTH + Measures.RIGHT_COLUMN) / 2;
        List<Card> column =
                scene.cards().values().stream()
                        .filter(card -> left == onLeft(card))
                        .sorted(Comparator.comparingDouble(Card::y))
                        .toList();
        Optional<Card> before =
                column.stream()
                        .filter(card -> left == card.y() < point.getY())
                        .reduce((one, other) -> left ? other : one);
        Optional<StepId> below =
                before.map(Card::last).or(() -> left ? Optional.empty() : lastOf(procedure, left));
        Phase phase =
                before.map(card -> card.face().phase())
                        .orElse(left ? Phase.TEARDOWN : Phase.REASSEMBLY);
        return new AddStep(
                Step.titled(FreshIds.step(procedure), phase, ""),
                below.or(() -> lastOf(procedure, left)),
                Optional.empty());
    }

    /** A step of no title yet below another one, or the last of the page, linked as told. */
    static AddStep below(Procedure procedure, Optional<StepId> step) {
        Optional<StepId> above = step.or(() -> lastOf(procedure, false));
        Phase phase = above.map(id -> procedure.step(id).phase()).orElse(Phase.TEARDOWN);
        return new AddStep(
                Step.titled(FreshIds.step(procedure), phase, ""),
                above,
                Optional.of(LinkOrigin.AS_TOLD));
    }

    private static boolean onLeft(Card card) {
        return card.centreX() < (Measures.WIDTH + Measures.RIGHT_COLUMN) / 2;
    }

    /** The step that a first one of a column follows: the last before the other column begins. */
    private static Optional<StepId> lastOf(Procedure procedure, boolean left) {
        return procedure.steps().stream()
                .filter(step -> !left || step.phase().compareTo(Phase.REASSEMBLY) < 0)
                .map(Step::id)
                .reduce((one, other) -> other);
    }
}
