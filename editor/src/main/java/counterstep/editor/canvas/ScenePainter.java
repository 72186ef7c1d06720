package counterstep.editor.canvas;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** Draws the steps and links of what is seen. */
final class ScenePainter implements StepCells.CellPainter {
    private static final double BEYOND = 12;
    private static final float PALE = 0.7f;

    private final StepCells cells;
    private final Feedback feedback;
    private final StepPainter steps;

    /**
     * @param photos where near steps get their photos
     */
    ScenePainter(StepCells cells, Feedback feedback, Thumbnails photos) {
        this.cells = cells;
        this.feedback = feedback;
        this.steps = new StepPainter(photos);
    }

    @Override
    public void paint(Graphics2D graphics, Object id, double zoom) {
        GraphPane.smooth(graphics);
        Scene scene = cells.seen();
        if (id instanceof LinkEnds link) {
            Optional.ofNullable(scene.routes().get(link))
                    .filter(route -> isHit(graphics, route.bounds()))
                    .ifPresent(
                            route ->
                                    LinkPainter.paint(
                                            graphics, route, scene, new Lettering(zoom).line()));
        } else if (id instanceof StepId step) {
            scene.standsFor(step)
                    .filter(card -> isHit(graphics, card.box()))
                    .ifPresent(card -> paint(graphics, card, zoom));
        }
    }

    /** What glides is asked here; what stands in its place was asked for already. */
    private boolean isHit(Graphics2D graphics, Rectangle2D box) {
        return !cells.isGliding()
                || graphics.hitClip(
                        (int) (box.getX() - BEYOND),
                        (int) (box.getY() - BEYOND),
                        (int) (box.getWidth() + 2 * BEYOND),
                        (int) (box.getHeight() + 2 * BEYOND));
    }

    /** The steps that the pointer takes along, pale, where they would come to stand. */
    void paintDragged(Graphics2D graphics, double zoom) {
        feedback.drag()
                .filter(Drag.Moving.class::isInstance)
                .map(Drag.Moving.class::cast)
                .ifPresent(
                        moving ->
                                moving.steps().stream()
                                        .flatMap(step -> cells.scene().standsFor(step).stream())
                                        .distinct()
                                        .forEach(card -> pale(graphics, card, moving, zoom)));
    }

    private void pale(Graphics2D graphics, Card card, Drag.Moving moving, double zoom) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setComposite(AlphaComposite.SrcOver.derive(PALE));
        own.translate(card.x() + moving.right(), card.y() + moving.down());
        steps.paint(own, card.face(), StepPainter.State.PLAIN, zoom);
        own.dispose();
    }

    private void paint(Graphics2D graphics, Card card, double zoom) {
        graphics.translate(card.x(), card.y());
        steps.paint(graphics, card.face(), state(card), zoom);
    }

    private StepPainter.State state(Card card) {
        if (cells.scene().isSelected(card)) {
            return StepPainter.State.SELECTED;
        }
        return feedback.hovered().equals(Optional.of(card.step()))
                ? StepPainter.State.HOVERED
                : StepPainter.State.PLAIN;
    }
}
