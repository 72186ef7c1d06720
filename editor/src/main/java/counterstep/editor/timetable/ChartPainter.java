package counterstep.editor.timetable;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.Attendance;
import counterstep.model.StepId;
import counterstep.plan.PageTimetable.Bar;
import counterstep.plan.PageTimetable.Pause;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.RoundRectangle2D;
import java.util.Set;

/** Draws the rows of a timetable at one scale. */
final class ChartPainter {
    private static final int CORNER = 8;
    private static final BasicStroke DASHED =
            new BasicStroke(
                    1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0);

    private final Graphics2D graphics;
    private final Shown shown;
    private final Scale scale;
    private final Set<StepId> selected;

    ChartPainter(Graphics2D graphics, Shown shown, Scale scale, Set<StepId> selected) {
        this.graphics = graphics;
        this.shown = shown;
        this.scale = scale;
        this.selected = selected;
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    }

    void paint() {
        axis();
        shown.tools().forEach(this::tool);
        for (Bar bar : shown.times().bars()) {
            hands(bar);
            bar.pauses().forEach(pause -> pause(bar, pause));
            secondPerson(bar);
        }
        later();
    }

    private void axis() {
        int apart = scale.secondsBetweenTicks();
        graphics.setFont(Type.LABEL.font());
        for (long at = 0; at <= shown.times().seconds(); at += apart) {
            int x = (int) scale.x((int) at);
            graphics.setColor(Palette.LINE.color());
            graphics.fillRect(x, Shown.AXIS - 4, 1, shown.height() - Shown.AXIS);
            graphics.setColor(Palette.SOFT.color());
            String minutes = Long.toString(at / 60);
            graphics.drawString(
                    minutes,
                    Math.max(0, x - graphics.getFontMetrics().stringWidth(minutes) / 2),
                    Shown.AXIS - 8);
        }
    }

    private void hands(Bar bar) {
        int top = shown.tops().get(Lane.HANDS) + 2;
        RoundRectangle2D box = box(bar.start(), bar.handsEnd(), top, Lane.HANDS.height() - 10);
        boolean chosen = selected.contains(bar.step());
        graphics.setColor((chosen ? Palette.ACCENT_GROUND : Palette.CARD).color());
        graphics.fill(box);
        graphics.setStroke(new BasicStroke(chosen ? 2 : 1));
        graphics.setColor((chosen ? Palette.ACCENT : Palette.OUTLINE).color());
        graphics.draw(box);
        graphics.setFont(Type.LABEL_STRONG.font());
        graphics.setColor(Palette.INK.color());
        centred(Integer.toString(shown.number(bar.step())), box);
        if (shown.critical(bar.step()) && bar.handsEnd() > bar.start()) {
            heavyLine(box);
        }
    }

    private void heavyLine(RoundRectangle2D box) {
        graphics.setColor(Palette.CRITICAL.color());
        graphics.fillRect(
                (int) Math.round(box.getX()),
                (int) box.getMaxY() + 1,
                (int) Math.max(2, Math.round(box.getWidth())),
                3);
    }

    private void tool(Shown.InHand tool) {
        int top = shown.tops().get(Lane.TOOL) + 3;
        RoundRectangle2D box = box(tool.start(), tool.end(), top, Lane.TOOL.height() - 7);
        graphics.setColor(Palette.TAG.color());
        graphics.fill(box);
        graphics.setFont(Type.LABEL_STRONG.font());
        graphics.setColor(Palette.INK.color());
        leading(tool.label(), box);
    }

    private void pause(Bar bar, Pause pause) {
        Lane lane = pause.attendance() == Attendance.WATCHED ? Lane.WATCHED : Lane.UNATTENDED;
        if (pause.end() == pause.start()) {
            return;
        }
        int top = shown.tops().get(lane) + 2;
        RoundRectangle2D box = box(pause.start(), pause.end(), top, lane.height() - 8);
        graphics.setColor(Palette.SIDE.color());
        graphics.fill(box);
        graphics.setColor(
                (selected.contains(bar.step()) ? Palette.ACCENT : Palette.FIELD_OUTLINE).color());
        graphics.setStroke(DASHED);
        graphics.draw(box);
        graphics.setFont(Type.LABEL_STRONG.font());
        graphics.setColor(Palette.SOFT.color());
        int number = shown.number(bar.step());
        String time = Clock.words(pause.end() - pause.start());
        String words = number + " " + shown.step(bar.step()).title() + ", " + time;
        boolean fits = graphics.getFontMetrics().stringWidth(words) + 12 <= box.getWidth();
        leading(fits ? words : number + ", " + time, box);
        if (shown.critical(bar.step())) {
            heavyLine(box);
        }
    }

    private void secondPerson(Bar bar) {
        String holds = shown.step(bar.step()).secondPerson();
        if (holds.isEmpty()) {
            return;
        }
        int top = shown.tops().get(Lane.SECOND_PERSON) + 3;
        RoundRectangle2D box = box(bar.start(), bar.end(), top, Lane.SECOND_PERSON.height() - 8);
        graphics.setColor(Palette.CARD.color());
        graphics.fill(box);
        graphics.setStroke(new BasicStroke(1));
        graphics.setColor(Palette.FIELD_OUTLINE.color());
        graphics.draw(box);
        graphics.setFont(Type.LABEL.font());
        graphics.setColor(Palette.SOFT.color());
        graphics.drawString(holds, (float) box.getMaxX() + 5, baseline(box));
    }

    /** Left out where there is no room; the tip of the bar says it too. */
    private void later() {
        graphics.setFont(Type.LABEL.font());
        graphics.setColor(Palette.SOFT.color());
        FontMetrics metrics = graphics.getFontMetrics();
        int baseline = shown.tops().get(Lane.LATER) + 15;
        double free = 0;
        for (Bar bar : shown.times().bars()) {
            String words = Clock.words(shown.later(bar.step()));
            double width = metrics.stringWidth(words);
            double left = (scale.x(bar.start()) + scale.x(bar.end()) - width) / 2;
            if (!shown.critical(bar.step()) && left >= free) {
                graphics.drawString(words, (float) left, baseline);
                free = left + width + 6;
            }
        }
    }

    private RoundRectangle2D box(int start, int end, int top, int height) {
        double left = scale.x(start);
        double width = Math.max(1, scale.x(end) - left - 2);
        return new RoundRectangle2D.Double(
                left + 0.5, top + 0.5, width, height, Math.min(CORNER, width), CORNER);
    }

    private void centred(String text, RoundRectangle2D box) {
        int width = graphics.getFontMetrics().stringWidth(text);
        if (width <= box.getWidth()) {
            graphics.drawString(text, (float) (box.getCenterX() - width / 2.0), baseline(box));
        }
    }

    /** Text from the left end of a box on, cut where the box ends; none in a box too narrow. */
    private void leading(String text, RoundRectangle2D box) {
        if (box.getWidth() < 18) {
            return;
        }
        Shape clip = graphics.getClip();
        graphics.clip(box);
        graphics.drawString(text, (float) box.getX() + 7, baseline(box));
        graphics.setClip(clip);
    }

    private float baseline(RoundRectangle2D box) {
        FontMetrics metrics = graphics.getFontMetrics();
        return (float) (box.getCenterY() + (metrics.getAscent() - metrics.getDescent()) / 2.0);
    }
}
