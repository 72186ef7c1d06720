package counterstep.editor.bench;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JComponent;
import javax.swing.plaf.basic.BasicSliderUI;

/** A thin track with a gap before each phase, the words of the phases below. */
final class StepSliderLook extends BasicSliderUI {
    private static final int THUMB = 24;
    private static final int TRACK = 6;
    private static final int HEIGHT = 44;

    private final StepSlider steps;

    StepSliderLook(StepSlider steps) {
        super(steps);
        this.steps = steps;
    }

    @Override
    public Dimension getPreferredSize(JComponent component) {
        return new Dimension(400, HEIGHT);
    }

    @Override
    public Dimension getMinimumSize(JComponent component) {
        return new Dimension(120, HEIGHT);
    }

    @Override
    protected Dimension getThumbSize() {
        return new Dimension(THUMB, THUMB);
    }

    @Override
    protected void calculateTrackRect() {
        super.calculateTrackRect();
        trackRect.y = contentRect.y + 2;
        trackRect.height = THUMB;
    }

    /** A click on the track goes there at once. */
    @Override
    protected void scrollDueToClickInTrack(int direction) {
        Point pointer = steps.getMousePosition();
        if (pointer == null) { // as Swing says that the pointer is elsewhere
            super.scrollDueToClickInTrack(direction);
        } else {
            steps.setValue(valueForXPosition(pointer.x));
        }
    }

    @Override
    public void paint(Graphics graphics, JComponent component) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        recalculateIfInsetsChanged();
        double at = thumbRect.getCenterX();
        double middle = thumbRect.getCenterY();
        own.setColor(Palette.FIELD_OUTLINE.color());
        own.fill(bar(trackRect.x, trackRect.x + trackRect.width, middle));
        own.setColor(Palette.ACCENT.color());
        own.fill(bar(trackRect.x, at, middle));
        phases(own, middle);
        own.setColor(Palette.PANEL.color());
        own.fill(new Ellipse2D.Double(at - 8, middle - 8, 16, 16));
        own.setColor(Palette.ACCENT.color());
        own.setStroke(new BasicStroke(3));
        own.draw(new Ellipse2D.Double(at - 7, middle - 7, 14, 14));
        if (steps.isFocusOwner()) {
            own.setStroke(new BasicStroke(2));
            own.draw(new Ellipse2D.Double(at - 11, middle - 11, 22, 22));
        }
        own.dispose();
    }

    private static RoundRectangle2D bar(double from, double to, double middle) {
        return new RoundRectangle2D.Double(
                from, middle - TRACK / 2.0, Math.max(0, to - from), TRACK, TRACK, TRACK);
    }

    /** A word that would run into the one before is moved on. */
    private void phases(Graphics2D graphics, double middle) {
        graphics.setFont(Type.LABEL.font());
        FontMetrics metrics = graphics.getFontMetrics();
        double free = 0;
        for (StepSlider.Mark mark : steps.marks()) {
            double gap =
                    (xPositionForValue(mark.step())
                                    + xPositionForValue(Math.max(1, mark.step() - 1)))
                            / 2.0;
            graphics.setColor(Palette.PANEL.color());
            if (mark.step() > 1) {
                graphics.fillRect((int) gap - 1, (int) middle - TRACK, 2, 2 * TRACK);
            }
            int width = metrics.stringWidth(mark.word());
            double left =
                    Math.min(Math.max(free, gap), Math.max(free, steps.getWidth() - width - 2));
            graphics.setColor(Palette.SOFT.color());
            graphics.drawString(mark.word(), (float) left, HEIGHT - 6f);
            free = left + width + 8;
        }
    }
}
