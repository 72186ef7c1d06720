package counterstep.editor.order;

import counterstep.editor.theme.Hatch;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.Index;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.toolchange.ToolRun;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * One order from top to bottom: name of each tool where it is picked up, the tool in hand as a
 * ribbon, the steps.
 *
 * @param orders of which it draws one
 * @param order which
 * @param runs the tools in hand along it
 * @param left where it begins, in pixels
 */
record OrderColumn(TwoOrders orders, Index order, List<ToolRun> runs, int left) {
    static final int ROW = 26;
    static final int WIDTH = 430;
    private static final int RIBBON_LEFT = 104;
    private static final int RIBBON_WIDTH = 10;
    private static final int CARD_LEFT = RIBBON_LEFT + RIBBON_WIDTH + 8;
    private static final int LABEL_APART = 13;
    private static final int MARK_WIDTH = 40;

    int cardLeft() {
        return left + CARD_LEFT;
    }

    int right() {
        return left + WIDTH;
    }

    /** The middle of a step's row. */
    int middle(StepId step) {
        return order.page(step) * ROW + ROW / 2;
    }

    void paint(Graphics2D graphics, int firstRow, int endRow, Optional<StepId> pointed) {
        ribbon(graphics, firstRow, endRow);
        for (int row = firstRow; row < Math.min(endRow, orders.size()); row++) {
            Step step = order.procedure().steps().get(row);
            row(graphics, row, step, pointed.filter(step.id()::equals).isPresent());
        }
    }

    private void ribbon(Graphics2D graphics, int firstRow, int endRow) {
        int free = Integer.MIN_VALUE;
        for (ToolRun run : runs) {
            double top = run.from() * ROW + 1;
            int baseline = Math.max(free, (int) top + LABEL_APART);
            free = baseline + LABEL_APART;
            if (run.to() < firstRow || run.from() > endRow) {
                continue;
            }
            Rectangle2D area =
                    new Rectangle2D.Double(
                            left + RIBBON_LEFT,
                            top,
                            RIBBON_WIDTH,
                            (run.to() - run.from()) * ROW - 2);
            Hatch.of(run.number()).fill(graphics, area, Palette.TAG.color(), Palette.SOFT.color());
            graphics.setColor(Palette.SOFT.color());
            graphics.setStroke(new BasicStroke(1));
            graphics.draw(area);
            name(graphics, run.tool().label(), baseline);
        }
    }

    private void name(Graphics2D graphics, String tool, int baseline) {
        graphics.setFont(Type.LABEL_STRONG.font());
        graphics.setColor(Palette.INK.color());
        FontMetrics metrics = graphics.getFontMetrics();
        String text = Shortened.to(tool, metrics, RIBBON_LEFT - 12);
        graphics.drawString(text, left + RIBBON_LEFT - 6 - metrics.stringWidth(text), baseline);
    }

    private void row(Graphics2D graphics, int row, Step step, boolean pointed) {
        boolean moved = orders.moved().contains(step.id());
        int top = row * ROW;
        RoundRectangle2D box =
                new RoundRectangle2D.Double(
                        cardLeft() + 0.5, top + 1.5, right() - cardLeft() - 1.0, ROW - 3, 8, 8);
        if (moved || pointed) {
            graphics.setColor((moved ? Palette.ACCENT_GROUND : Palette.SIDE).color());
            graphics.fill(box);
        }
        if (pointed) {
            graphics.setColor(Palette.ACCENT.color());
            graphics.setStroke(new BasicStroke(2));
            graphics.draw(box);
        }
        int baseline = top + 17;
        graphics.setFont(Type.SMALL_STRONG.font());
        graphics.setColor(Palette.SOFT.color());
        String number = String.valueOf(row + 1);
        FontMetrics figures = graphics.getFontMetrics();
        graphics.drawString(number, cardLeft() + 32 - figures.stringWidth(number), baseline);
        graphics.setFont((moved ? Type.BODY_STRONG : Type.BODY).font());
        graphics.setColor(Palette.INK.color());
        int room = right() - cardLeft() - 44 - MARK_WIDTH;
        graphics.drawString(
                Shortened.to(step.title(), graphics.getFontMetrics(), room),
                cardLeft() + 44,
                baseline);
        if (moved) {
            mark(graphics, orders.earlier(step.id()), baseline);
        }
    }

    /** A triangle that points up for a step that comes earlier, and by how many places. */
    private void mark(Graphics2D graphics, int earlier, int baseline) {
        graphics.setColor(Palette.ACCENT.color());
        graphics.setFont(Type.LABEL_STRONG.font());
        int x = right() - MARK_WIDTH + 4;
        int base = earlier > 0 ? baseline - 1 : baseline - 8;
        int tip = earlier > 0 ? baseline - 8 : baseline - 1;
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(x, base);
        triangle.lineTo(x + 8, base);
        triangle.lineTo(x + 4, tip);
        triangle.closePath();
        graphics.fill(triangle);
        graphics.drawString(String.valueOf(Math.abs(earlier)), x + 12, baseline);
    }
}
