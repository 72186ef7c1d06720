package counterstep.editor.canvas;

import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import counterstep.export.shape.PhaseEdge;
import counterstep.model.Phase;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Draws a step with its upper left corner at the origin, in pixels at 100 %. */
final class StepPainter {
    private static final double EDGE = 5;

    /** The tick is wider than a bar and stands a little further in. */
    private static final double VERIFY_EDGE = 9;

    private static final double TEXT_LEFT = 18;
    private static final double TITLE_LEFT = 42;
    private static final double RIGHT = Measures.WIDTH - 10;
    private static final double TITLE_LINE = 21;
    private static final double MARK_LINE = 52;

    private final TextFit fit = new TextFit();

    /** How a step stands out. */
    enum State {
        PLAIN,
        HOVERED,
        SELECTED
    }

    void paint(Graphics2D graphics, StepFace face, State state, double zoom) {
        if (state == State.SELECTED) {
            ring(graphics);
        }
        ground(graphics, state);
        graphics.setColor(Palette.SOFT.color());
        double edge = face.phase() == Phase.VERIFY ? VERIFY_EDGE : EDGE;
        PhaseEdge.of(face.phase(), Measures.HEIGHT - 16).paint(graphics, edge, 8, 1);
        if (zoom < Measures.FAR) {
            far(graphics, face);
            return;
        }
        head(graphics, face);
        double minutes = minutes(graphics, face.minutes());
        marks(graphics, face.marks(), minutes - 8);
        face.trouble()
                .ifPresent(
                        severity ->
                                SeverityMark.paint(graphics, severity, Measures.WIDTH - 16, 17, 1));
        if (!face.tool().isEmpty()) {
            tag(graphics, face.tool());
        }
    }

    private static void ring(Graphics2D graphics) {
        double off = Measures.RING;
        graphics.setColor(Palette.ACCENT.color());
        graphics.setStroke(new BasicStroke(2));
        graphics.draw(
                new RoundRectangle2D.Double(
                        -off, -off, Measures.WIDTH + 2 * off, Measures.HEIGHT + 2 * off, 18, 18));
    }

    private static void ground(Graphics2D graphics, State state) {
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
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(card);
    }

    private static void far(Graphics2D graphics, StepFace face) {
        graphics.setFont(Type.BODY_STRONG.font().deriveFont(30f));
        graphics.setColor(Palette.INK.color());
        graphics.drawString("" + face.number(), (float) TEXT_LEFT + 2, 48);
        face.trouble()
                .ifPresent(
                        severity ->
                                SeverityMark.paint(
                                        graphics, severity, Measures.WIDTH - 34, 37, 2.2));
    }

    private void head(Graphics2D graphics, StepFace face) {
        graphics.setFont(Type.SMALL_STRONG.font());
        graphics.setColor(Palette.FAINT.color());
        String number = "" + face.number();
        Figures.draw(graphics, number, TEXT_LEFT, TITLE_LINE);
        double left =
                Math.max(
                        TITLE_LEFT,
                        TEXT_LEFT + 8 + Figures.width(graphics.getFontMetrics(), number));
        double right = face.trouble().isPresent() ? Measures.WIDTH - 30 : RIGHT;
        graphics.setFont(Type.BODY_STRONG.font());
        graphics.setColor(Palette.INK.color());
        String title = fit.within(face.title(), graphics.getFontMetrics(), right - left);
        graphics.drawString(title, (float) left, (float) TITLE_LINE);
    }

    private static double minutes(Graphics2D graphics, String minutes) {
        graphics.setFont(Type.SMALL.font());
        graphics.setColor(Palette.FAINT.color());
        Figures.drawRight(graphics, minutes, RIGHT, MARK_LINE);
        return RIGHT - Figures.width(graphics.getFontMetrics(), minutes);
    }

    private static void marks(Graphics2D graphics, List<StepMark> marks, double right) {
        graphics.setFont(Type.SMALL.font());
        FontMetrics metrics = graphics.getFontMetrics();
        double x = TEXT_LEFT;
        for (int place = 0; place < marks.size(); place++) {
            StepMark mark = marks.get(place);
            String more = "+" + (marks.size() - place);
            double width = 21 + metrics.stringWidth(mark.text());
            boolean last = place == marks.size() - 1;
            if (x + width + (last ? 0 : 14 + metrics.stringWidth(more)) > right && place > 0) {
                graphics.setColor(Palette.SOFT.color());
                graphics.drawString(more, (float) x, (float) MARK_LINE);
                return;
            }
            graphics.setColor(Palette.INK.color());
            mark.mark().paint(graphics, x + 8, MARK_LINE - 4, 1);
            graphics.setColor(Palette.SOFT.color());
            graphics.drawString(mark.text(), (float) x + 21, (float) MARK_LINE);
            x += width + (mark.text().isEmpty() ? 6 : 14);
        }
    }

    private void tag(Graphics2D graphics, String tool) {
        graphics.setFont(Type.LABEL_STRONG.font());
        FontMetrics metrics = graphics.getFontMetrics();
        String text = fit.within(tool, metrics, Measures.WIDTH - 50);
        double width = metrics.stringWidth(text) + 16;
        RoundRectangle2D tag =
                new RoundRectangle2D.Double(TEXT_LEFT, Measures.HEIGHT - 9, width, 18, 18, 18);
        graphics.setColor(Palette.TAG.color());
        graphics.fill(tag);
        graphics.setColor(Palette.OUTLINE.color());
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(tag);
        graphics.setColor(Palette.INK.color());
        graphics.drawString(text, (float) TEXT_LEFT + 8, (float) Measures.HEIGHT + 4);
    }
}
