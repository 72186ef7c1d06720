package counterstep.editor.timetable;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.StepId;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.HashMap;
import java.util.Map;
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
    private final Map<Row, Double> written = new HashMap<>();

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
        for (Block block : shown.blocks()) {
            switch (block.kind()) {
                case HANDS -> hands(block);
                case HELPS -> helps(block);
                case TOOL -> tool(block);
                case PICK_UP -> pickUp(block);
                case WAIT -> waiting(block);
                case HOLDS -> holds(block);
                case LATER -> later(block);
            }
        }
    }

    private boolean chosen(Block block) {
        return block.step().filter(selected::contains).isPresent();
    }

    private void axis() {
        int apart = scale.secondsBetweenTicks();
        graphics.setFont(Type.LABEL.font());
        for (long at = 0; at <= shown.seconds(); at += apart) {
            int x = (int) scale.x((double) at);
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

    private void hands(Block block) {
        RoundRectangle2D box = box(block, 2, 10);
        boolean chosen = chosen(block);
        graphics.setColor((chosen ? Palette.ACCENT_GROUND : Palette.CARD).color());
        graphics.fill(box);
        graphics.setStroke(new BasicStroke(chosen ? 2 : 1));
        graphics.setColor((chosen ? Palette.ACCENT : Palette.OUTLINE).color());
        graphics.draw(box);
        graphics.setFont(Type.LABEL_STRONG.font());
        graphics.setColor(Palette.INK.color());
        centred(block, box);
        if (block.critical()) {
            heavyLine(box);
        }
    }

    private void helps(Block block) {
        RoundRectangle2D box = box(block, 2, 10);
        dashed(block, box);
        graphics.setFont(Type.LABEL.font());
        graphics.setColor(Palette.SOFT.color());
        centred(block, box);
    }

    private void dashed(Block block, RoundRectangle2D box) {
        graphics.setColor(Palette.SIDE.color());
        graphics.fill(box);
        graphics.setColor((chosen(block) ? Palette.ACCENT : Palette.FIELD_OUTLINE).color());
        graphics.setStroke(DASHED);
        graphics.draw(box);
    }

    private void heavyLine(RoundRectangle2D box) {
        graphics.setColor(Palette.CRITICAL.color());
        graphics.fillRect(
                (int) Math.round(box.getX()),
                (int) box.getMaxY() + 1,
                (int) Math.max(2, Math.round(box.getWidth())),
                3);
    }

    private void tool(Block block) {
        RoundRectangle2D box = box(block, 3, 7);
        graphics.setColor(Palette.TAG.color());
        graphics.fill(box);
        graphics.setFont(Type.LABEL_STRONG.font());
        graphics.setColor(Palette.INK.color());
        leading(fitting(block, box.getWidth() - 4), box);
    }

    /** A thin bar, since it lasts seconds where the work lasts minutes. */
    private void pickUp(Block block) {
        double left = scale.x(block.from());
        double width = Math.max(2, scale.x(block.to()) - left - 1);
        graphics.setColor(Palette.SOFT.color());
        graphics.fill(
                new Rectangle2D.Double(
                        left, block.row().top() + 3.5, width, block.row().height() - 7));
    }

    private void waiting(Block block) {
        RoundRectangle2D box = box(block, 2, 8);
        dashed(block, box);
        graphics.setFont(Type.LABEL_STRONG.font());
        graphics.setColor(Palette.SOFT.color());
        leading(fitting(block, box.getWidth() - 12), box);
        if (block.critical()) {
            heavyLine(box);
        }
    }

    private void holds(Block block) {
        RoundRectangle2D box = box(block, 3, 8);
        graphics.setColor(Palette.CARD.color());
        graphics.fill(box);
        graphics.setStroke(new BasicStroke(chosen(block) ? 2 : 1));
        graphics.setColor((chosen(block) ? Palette.ACCENT : Palette.FIELD_OUTLINE).color());
        graphics.draw(box);
        graphics.setFont(Type.LABEL.font());
        graphics.setColor(Palette.SOFT.color());
        double left = box.getMaxX() + 5;
        double room = next(block) - left - 4;
        String words = fitting(block, room);
        if (words.isEmpty() && box.getMaxX() > scale.right() / 2) {
            before(block.words().get(0), box);
        } else {
            graphics.drawString(words, (float) left, baseline(box));
        }
    }

    /** Words in front of a box that has no room behind it. */
    private void before(String words, RoundRectangle2D box) {
        int width = graphics.getFontMetrics().stringWidth(words);
        graphics.drawString(words, (float) box.getX() - 5 - width, baseline(box));
    }

    /** Where the next block of the same row begins, or the drawing ends. */
    private double next(Block block) {
        return shown.blocks().stream()
                .filter(other -> other.row().equals(block.row()) && other.from() > block.from())
                .mapToDouble(other -> scale.x(other.from()))
                .min()
                .orElse(scale.right());
    }

    /** Left out where there is no room; the tip of the bar says it too. */
    private void later(Block block) {
        graphics.setFont(Type.LABEL.font());
        graphics.setColor(Palette.SOFT.color());
        String words = block.words().get(0);
        double width = graphics.getFontMetrics().stringWidth(words);
        double left = (scale.x(block.from()) + scale.x(block.to()) - width) / 2;
        if (left >= written.getOrDefault(block.row(), 0.0)) {
            graphics.drawString(words, (float) left, block.row().top() + 15);
            written.put(block.row(), left + width + 6);
        }
    }

    private RoundRectangle2D box(Block block, int above, int less) {
        double left = scale.x(block.from());
        double width = Math.max(1, scale.x(block.to()) - left - 2);
        return new RoundRectangle2D.Double(
                left + 0.5,
                block.row().top() + above + 0.5,
                width,
                block.row().height() - less,
                Math.min(CORNER, width),
                CORNER);
    }

    /** The longest words that there is room for. */
    private String fitting(Block block, double room) {
        FontMetrics metrics = graphics.getFontMetrics();
        return block.words().stream()
                .filter(words -> metrics.stringWidth(words) <= room)
                .findFirst()
                .orElse("");
    }

    private void centred(Block block, RoundRectangle2D box) {
        String text = fitting(block, box.getWidth() - 2);
        int width = graphics.getFontMetrics().stringWidth(text);
        graphics.drawString(text, (float) (box.getCenterX() - width / 2.0), baseline(box));
    }

    /** Text near the left end of a box, in its middle where it is narrow. */
    private void leading(String text, RoundRectangle2D box) {
        double beside = (box.getWidth() - graphics.getFontMetrics().stringWidth(text)) / 2;
        graphics.drawString(text, (float) (box.getX() + Math.min(7, beside)), baseline(box));
    }

    private float baseline(RoundRectangle2D box) {
        FontMetrics metrics = graphics.getFontMetrics();
        return (float) (box.getCenterY() + (metrics.getAscent() - metrics.getDescent()) / 2.0);
    }
}
