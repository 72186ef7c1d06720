package counterstep.editor.canvas;

import counterstep.model.StepId;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where steps on their way come to stand: in line with edges or middles of other steps, or with a
 * column, when they come near enough.
 */
final class Alignment {
    private static final double BEYOND = 24;

    /** A distance to go, and the line to which it leads. */
    private record Pull(double by, double line, Rectangle2D with) {}

    private final Rectangle2D box;
    private final List<Rectangle2D> others;
    private final double reach;

    private Alignment(Rectangle2D box, List<Rectangle2D> others, double reach) {
        this.box = box;
        this.others = others;
        this.reach = reach;
    }

    /**
     * The drag as it snaps.
     *
     * @param right how far the pointer has gone
     * @param down how far the pointer has gone
     * @param reach how near is near enough, in pixels of the drawing
     */
    static Drag.Moving of(Scene scene, Set<StepId> steps, double right, double down, double reach) {
        List<Rectangle2D> moved = boxes(scene, steps, true);
        if (moved.isEmpty()) {
            return new Drag.Moving(steps, right, down, List.of());
        }
        Rectangle2D box = moved.get(0);
        moved.forEach(box::add);
        box.setRect(box.getX() + right, box.getY() + down, box.getWidth(), box.getHeight());
        return new Alignment(box, boxes(scene, steps, false), reach).drag(steps, right, down);
    }

    private static List<Rectangle2D> boxes(Scene scene, Set<StepId> steps, boolean among) {
        return scene.cards().values().stream()
                .filter(card -> steps.contains(card.step()) == among)
                .map(Card::box)
                .toList();
    }

    private Drag.Moving drag(Set<StepId> steps, double right, double down) {
        Optional<Pull> across = across();
        Optional<Pull> along = along();
        double byX = across.map(Pull::by).orElse(0.0);
        double byY = along.map(Pull::by).orElse(0.0);
        box.setRect(box.getX() + byX, box.getY() + byY, box.getWidth(), box.getHeight());
        List<Line2D> guides = new ArrayList<>();
        across.ifPresent(pull -> guides.add(upright(pull)));
        along.ifPresent(pull -> guides.add(level(pull)));
        return new Drag.Moving(steps, right + byX, down + byY, guides);
    }

    private Optional<Pull> across() {
        List<Pull> pulls = new ArrayList<>();
        for (double column : new double[] {0, Measures.RIGHT_COLUMN}) {
            pulls.add(new Pull(column - box.getX(), column, box));
        }
        for (Rectangle2D other : others) {
            pulls.add(new Pull(other.getX() - box.getX(), other.getX(), other));
            pulls.add(new Pull(other.getMaxX() - box.getMaxX(), other.getMaxX(), other));
            pulls.add(new Pull(other.getCenterX() - box.getCenterX(), other.getCenterX(), other));
        }
        return nearest(pulls);
    }

    private Optional<Pull> along() {
        List<Pull> pulls = new ArrayList<>();
        for (Rectangle2D other : others) {
            pulls.add(new Pull(other.getY() - box.getY(), other.getY(), other));
            pulls.add(new Pull(other.getMaxY() - box.getMaxY(), other.getMaxY(), other));
            pulls.add(new Pull(other.getCenterY() - box.getCenterY(), other.getCenterY(), other));
        }
        return nearest(pulls);
    }

    /** The shortest way; of two that are as short, the one that was asked for first. */
    private Optional<Pull> nearest(List<Pull> pulls) {
        Pull best = null;
        for (Pull pull : pulls) {
            boolean near = Math.abs(pull.by()) <= reach;
            if (near && (best == null || Math.abs(pull.by()) < Math.abs(best.by()))) {
                best = pull;
            }
        }
        return Optional.ofNullable(best);
    }

    private Line2D upright(Pull pull) {
        double top = Math.min(box.getY(), pull.with().getY()) - BEYOND;
        double bottom = Math.max(box.getMaxY(), pull.with().getMaxY()) + BEYOND;
        return new Line2D.Double(pull.line(), top, pull.line(), bottom);
    }

    private Line2D level(Pull pull) {
        double left = Math.min(box.getX(), pull.with().getX()) - BEYOND;
        double right = Math.max(box.getMaxX(), pull.with().getMaxX()) + BEYOND;
        return new Line2D.Double(left, pull.line(), right, pull.line());
    }
}
