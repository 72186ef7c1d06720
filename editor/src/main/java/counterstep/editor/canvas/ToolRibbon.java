package counterstep.editor.canvas;

import counterstep.editor.theme.Hatch;
import counterstep.editor.theme.Palette;
import counterstep.model.StepId;
import counterstep.toolchange.ToolRun;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * The tool in hand beside the steps, at the side where rungs are, in page order: down the teardown,
 * up the reassembly. It runs on over the gap to a step directly above or below.
 */
final class ToolRibbon {
    private static final double OFF = 7;
    private static final double WIDTH = 8;
    private static final double MIDDLE = (Measures.RIGHT_COLUMN + Measures.WIDTH) / 2;

    private ToolRibbon() {}

    static void paint(Graphics2D graphics, Scene scene, PlanShown shown) {
        graphics.setStroke(new BasicStroke(1));
        List<StepId> order = shown.order();
        int run = 0;
        for (int place = 0; place < order.size(); place++) {
            while (run + 1 < shown.runs().size() && shown.runs().get(run).to() <= place) {
                run++;
            }
            Optional<Card> card = scene.card(order.get(place));
            if (card.isPresent() && PlanMarks.seen(graphics, card.get().box())) {
                Strip strip = strip(card.get(), place, scene, order);
                for (int at = run; at < shown.runs().size(); at++) {
                    ToolRun piece = shown.runs().get(at);
                    if (piece.from() < place + 1 && piece.to() > place) {
                        paint(graphics, strip, piece, place);
                    }
                }
            }
        }
    }

    /**
     * Where the ribbon stands beside one step.
     *
     * @param x its left edge
     * @param begin where the step begins
     * @param end where the next one does; above the beginning where work runs up
     */
    private record Strip(double x, double begin, double end) {
        double at(double share) {
            return begin + (end - begin) * share;
        }
    }

    private static Strip strip(Card card, int place, Scene scene, List<StepId> order) {
        Rectangle2D box = card.box();
        Optional<Rectangle2D> next = neighbour(place + 1, box, scene, order);
        Optional<Rectangle2D> previous = neighbour(place - 1, box, scene, order);
        boolean up =
                next.map(other -> other.getY() < box.getY())
                        .orElse(previous.filter(other -> other.getY() > box.getY()).isPresent());
        double begin = up ? box.getMaxY() : box.getY();
        double end =
                next.map(other -> up ? other.getMaxY() : other.getY())
                        .orElse(up ? box.getY() : box.getMaxY());
        boolean left = box.getCenterX() < MIDDLE;
        return new Strip(left ? box.getMaxX() + OFF : box.getX() - OFF - WIDTH, begin, end);
    }

    /** The box of a step on the page that stands right above or below another. */
    private static Optional<Rectangle2D> neighbour(
            int place, Rectangle2D box, Scene scene, List<StepId> order) {
        if (place < 0 || place >= order.size()) {
            return Optional.empty();
        }
        return scene.card(order.get(place))
                .map(Card::box)
                .filter(other -> other.getX() == box.getX())
                .filter(other -> Math.abs(other.getY() - box.getY()) <= 2 * Measures.ROW);
    }

    private static void paint(Graphics2D graphics, Strip strip, ToolRun run, int place) {
        double from = strip.at(Math.max(0, run.from() - place));
        double to = strip.at(Math.min(1, run.to() - place));
        Rectangle2D area =
                new Rectangle2D.Double(strip.x(), Math.min(from, to), WIDTH, Math.abs(to - from));
        Hatch.of(run.number()).fill(graphics, area, Palette.TAG.color(), Palette.SOFT.color());
        graphics.setColor(Palette.SOFT.color());
        line(graphics, strip.x(), from, strip.x(), to);
        line(graphics, strip.x() + WIDTH, from, strip.x() + WIDTH, to);
        if (run.from() >= place) {
            line(graphics, strip.x(), from, strip.x() + WIDTH, from);
        }
        if (run.to() <= place + 1) {
            line(graphics, strip.x(), to, strip.x() + WIDTH, to);
        }
    }

    private static void line(Graphics2D graphics, double x1, double y1, double x2, double y2) {
        graphics.draw(new Line2D.Double(x1, y1, x2, y2));
    }
}
