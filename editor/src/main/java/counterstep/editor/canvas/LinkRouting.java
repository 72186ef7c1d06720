package counterstep.editor.canvas;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Ways of links: a short arrow between neighbours of a column, a lane outside of the columns for
 * links within a column, a lane in the gap for links across. Lanes are given greedily, short links
 * nearest to the steps, so that no two links of a lane share a stretch.
 */
final class LinkRouting {
    private static final double LANE = 14;
    private static final double FIRST_LANE = 18;
    private static final double LEAVE = 47;
    private static final double ENTER = 27;

    /** Which side of the steps a lane runs on. */
    private enum Side {
        LEFT,
        RIGHT,
        GAP
    }

    private record Stretch(double from, double to) {
        boolean touches(Stretch other) {
            return from < other.to + 6 && other.from < to + 6;
        }
    }

    private final Map<StepId, Card> cards;
    private final Card[] all; // many links ask all steps: a plain loop is several times faster
    private final double middle;
    private final Map<Side, List<List<Stretch>>> lanes =
            Map.of(
                    Side.LEFT, new ArrayList<>(),
                    Side.RIGHT, new ArrayList<>(),
                    Side.GAP, new ArrayList<>());

    private LinkRouting(Map<StepId, Card> cards) {
        this.cards = cards;
        this.all = cards.values().toArray(new Card[0]);
        this.middle = (Measures.WIDTH + Measures.RIGHT_COLUMN) / 2;
    }

    /**
     * Routes the links whose two steps have a place; the order of the result is that given. Those
     * that are only proposed take the lanes that are left.
     */
    static Map<LinkEnds, Route> of(
            Map<StepId, Card> cards,
            Collection<LinkEnds> links,
            Set<LinkEnds> critical,
            Set<LinkEnds> proposed) {
        LinkRouting routing = new LinkRouting(cards);
        Map<LinkEnds, Route> ways = new LinkedHashMap<>();
        links.stream()
                .filter(link -> cards.containsKey(link.before()))
                .filter(link -> cards.containsKey(link.after()))
                .sorted(
                        Comparator.<LinkEnds, Boolean>comparing(proposed::contains)
                                .thenComparingDouble(routing::height))
                .forEach(link -> ways.put(link, routing.route(link, critical.contains(link))));
        Map<LinkEnds, Route> inOrder = new LinkedHashMap<>();
        links.stream().filter(ways::containsKey).forEach(link -> inOrder.put(link, ways.get(link)));
        return inOrder;
    }

    private double height(LinkEnds link) {
        return Math.abs(cards.get(link.before()).y() - cards.get(link.after()).y());
    }

    private Route route(LinkEnds link, boolean critical) {
        Card from = cards.get(link.before());
        Card to = cards.get(link.after());
        return new Route(
                link, neighbours(from, to) ? straight(from, to) : byLane(from, to), critical);
    }

    /** One above the other with no step between them. */
    private boolean neighbours(Card from, Card to) {
        if (Math.abs(from.x() - to.x()) > Measures.WIDTH / 4) {
            return false;
        }
        double top = Math.min(from.y(), to.y());
        double bottom = Math.max(from.y(), to.y());
        if (bottom - top <= Measures.HEIGHT) {
            return false;
        }
        for (Card card : all) {
            boolean between = card.y() > top - 1 && card.y() < bottom + 1;
            boolean beside = Math.abs(card.x() - from.x()) >= Measures.WIDTH;
            boolean end = card.step().equals(from.step()) || card.step().equals(to.step());
            if (between && !beside && !end) {
                return false;
            }
        }
        return true;
    }

    private static List<Point2D> straight(Card from, Card to) {
        boolean down = from.y() < to.y();
        double leave = down ? from.y() + Measures.HEIGHT : from.y();
        double enter = down ? to.y() : to.y() + Measures.HEIGHT;
        double x =
                Math.max(from.x(), to.x()) + Measures.WIDTH / 2 - Math.abs(from.x() - to.x()) / 2;
        return List.of(new Point2D.Double(x, leave), new Point2D.Double(x, enter));
    }

    private List<Point2D> byLane(Card from, Card to) {
        Side side = side(from, to);
        boolean down = from.y() < to.y();
        double leave = from.y() + (down ? LEAVE : ENTER);
        double enter = to.y() + (down ? ENTER : LEAVE);
        int lane = takeLane(side, new Stretch(Math.min(leave, enter), Math.max(leave, enter)));
        double x = laneX(side, lane, from, to);
        double start = edge(from, x);
        double end = edge(to, x);
        return List.of(
                new Point2D.Double(start, leave),
                new Point2D.Double(x, leave),
                new Point2D.Double(x, enter),
                new Point2D.Double(end, enter));
    }

    private Side side(Card from, Card to) {
        boolean fromLeft = from.centreX() < middle;
        boolean toLeft = to.centreX() < middle;
        if (fromLeft != toLeft) {
            return Side.GAP;
        }
        return fromLeft ? Side.LEFT : Side.RIGHT;
    }

    private int takeLane(Side side, Stretch stretch) {
        List<List<Stretch>> taken = lanes.get(side);
        for (int lane = 0; lane < taken.size(); lane++) {
            if (taken.get(lane).stream().noneMatch(stretch::touches)) {
                taken.get(lane).add(stretch);
                return lane;
            }
        }
        taken.add(new ArrayList<>(List.of(stretch)));
        return taken.size() - 1;
    }

    private double laneX(Side side, int lane, Card from, Card to) {
        double away = FIRST_LANE + LANE * lane;
        return switch (side) {
            case LEFT -> leftmost(from, to) - away;
            case RIGHT -> rightmost(from, to) + Measures.WIDTH + away;
            case GAP ->
                    Math.max(from.x(), to.x()) - Math.min(away, Measures.COLUMN_GAP - FIRST_LANE);
        };
    }

    /** Left edge of the steps on the left beside which a lane between these two runs. */
    private double leftmost(Card from, Card to) {
        double left = from.x();
        for (Card card : all) {
            if (card.centreX() < middle && between(card, from, to)) {
                left = Math.min(left, card.x());
            }
        }
        return left;
    }

    private double rightmost(Card from, Card to) {
        double right = from.x();
        for (Card card : all) {
            if (card.centreX() >= middle && between(card, from, to)) {
                right = Math.max(right, card.x());
            }
        }
        return right;
    }

    private static boolean between(Card card, Card from, Card to) {
        return card.y() + Measures.HEIGHT >= Math.min(from.y(), to.y())
                && card.y() <= Math.max(from.y(), to.y()) + Measures.HEIGHT;
    }

    private static double edge(Card card, double lane) {
        return lane < card.centreX() ? card.x() : card.x() + Measures.WIDTH;
    }
}
