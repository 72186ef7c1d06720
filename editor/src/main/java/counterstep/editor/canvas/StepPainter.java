package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;

/**
 * Draws a step, or a folded phase, with its upper left corner at the origin, in pixels at 100 %.
 */
final class StepPainter {
    private final TextFit fit = new TextFit();
    private final MiddleFace middle = new MiddleFace(fit);
    private final NearFace near;
    private final PhaseCard folded = new PhaseCard(fit);

    /**
     * @param photos where near steps get their photos
     */
    StepPainter(Thumbnails photos) {
        this.near = new NearFace(fit, photos);
    }

    /** How a step stands out. */
    enum State {
        PLAIN,
        HOVERED,
        SELECTED
    }

    void paint(Graphics2D graphics, Face shown, State state, double zoom) {
        Lettering letters = new Lettering(zoom);
        if (state == State.SELECTED) {
            ring(graphics, letters);
        }
        ground(graphics, state, letters);
        if (shown instanceof PhaseFace face) {
            PhaseCard.leaves(graphics, letters.line());
            folded.paint(graphics, face, zoom);
        } else if (shown instanceof StepFace face) {
            paint(graphics, face, letters, zoom);
        }
    }

    private void paint(Graphics2D graphics, StepFace face, Lettering letters, double zoom) {
        switch (Detail.at(zoom)) {
            case FAR -> FarFace.paint(graphics, face, zoom);
            case MIDDLE -> middle.paint(graphics, face, letters);
            case NEAR -> near.paint(graphics, face, letters.growth());
        }
    }

    private static void ring(Graphics2D graphics, Lettering letters) {
        double off = Measures.RING;
        graphics.setColor(Palette.ACCENT.color());
        graphics.setStroke(new BasicStroke((float) (2 * letters.line())));
        graphics.draw(
                new RoundRectangle2D.Double(
                        -off, -off, Measures.WIDTH + 2 * off, Measures.HEIGHT + 2 * off, 18, 18));
    }

    private static void ground(Graphics2D graphics, State state, Lettering letters) {
        RoundRectangle2D card =
                new RoundRectangle2D.Double(
                        0,
                        0,
                        Measures.WIDTH,
                        Measures.HEIGHT,
                        2 * Measures.CORNER,
                        2 * Measures.CORNER);
        graphics.setColor(Palette.CARD.color());
        graphics.fill(card);
        boolean plain = state == State.PLAIN;
        graphics.setColor(plain ? Palette.OUTLINE.color() : Palette.FIELD_OUTLINE.color());
        graphics.setStroke(new BasicStroke((float) letters.line()));
        graphics.draw(card);
    }
}
