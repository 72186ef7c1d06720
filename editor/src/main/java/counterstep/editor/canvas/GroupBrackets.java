package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.model.GroupRule;
import counterstep.model.StepGroup;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Draws a thin bracket along the steps of each group, one in each column that it stands in, with a
 * short line to each of its steps, and a dot where they are kept in their order.
 */
final class GroupBrackets {
    private static final double OFF = 22;
    private static final double REACH = 5;
    private static final double MIDDLE = (Measures.RIGHT_COLUMN + Measures.WIDTH) / 2;

    private GroupBrackets() {}

    static void paint(Graphics2D graphics, Scene scene, List<StepGroup> groups) {
        for (StepGroup group : groups) {
            List<Rectangle2D> boxes =
                    group.steps().stream()
                            .flatMap(step -> scene.card(step).stream())
                            .map(Card::box)
                            .toList();
            boxes.stream()
                    .map(Rectangle2D::getX)
                    .distinct()
                    .forEach(x -> column(graphics, boxes, x, group.rule()));
        }
    }

    private static void column(
            Graphics2D graphics, List<Rectangle2D> boxes, double x, GroupRule rule) {
        List<Rectangle2D> column = boxes.stream().filter(box -> box.getX() == x).toList();
        Rectangle2D whole = column.stream().reduce(Rectangle2D::createUnion).orElseThrow();
        if (!PlanMarks.seen(graphics, whole)) {
            return;
        }
        boolean left = whole.getCenterX() < MIDDLE;
        double back = left ? whole.getMaxX() + OFF : whole.getX() - OFF;
        double tip = left ? back - REACH : back + REACH;
        graphics.setColor(Palette.SOFT.color());
        graphics.setStroke(new BasicStroke(1.5f));
        Path2D bracket = new Path2D.Double();
        bracket.moveTo(tip, whole.getY() + 2);
        bracket.lineTo(back, whole.getY() + 2);
        bracket.lineTo(back, whole.getMaxY() - 2);
        bracket.lineTo(tip, whole.getMaxY() - 2);
        graphics.draw(bracket);
        for (Rectangle2D box : column) {
            double y = box.getCenterY();
            graphics.draw(new Line2D.Double(back, y, tip, y));
            if (rule == GroupRule.RIGHT_AFTER) {
                graphics.fill(new Ellipse2D.Double(back - 3, y - 3, 6, 6));
            }
        }
    }
}
