package counterstep.editor.canvas;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A scene on its way from another: what stands in both has come a share of its way, what is new
 * stands in its place already. Links and rungs stay with their steps.
 */
final class Between {
    private final Scene from;
    private final Scene to;
    private final double share;
    private final Map<StepId, Card> cards = new LinkedHashMap<>();

    private Between(Scene from, Scene to, double share) {
        this.from = from;
        this.to = to;
        this.share = share;
        to.cards().forEach((id, card) -> cards.put(id, card(card)));
    }

    /**
     * The scene that is seen on the way.
     *
     * @param share how much of the way is done, 0 to 1
     */
    static Scene of(Scene from, Scene to, double share) {
        return new Between(from, to, share).scene();
    }

    /** Whether a card that stands in both scenes stands in another place. */
    static boolean isMove(Scene from, Scene to) {
        return to.cards().values().stream()
                .anyMatch(
                        card -> {
                            Card old = from.cards().get(card.step());
                            return old != null && (old.x() != card.x() || old.y() != card.y());
                        });
    }

    private Scene scene() {
        Map<LinkEnds, Route> routes = new LinkedHashMap<>();
        to.routes().forEach((link, route) -> routes.put(link, route(route)));
        return new Scene(
                cards,
                routes,
                to.following(),
                to.proposed(),
                to.rungs().stream().map(this::rung).toList(),
                emptyBoxes(),
                to.folding(),
                to.selection(),
                to.bounds());
    }

    private double on(double start, double end) {
        return start + share * (end - start);
    }

    private Card card(Card card) {
        Card old = from.cards().get(card.step());
        return old == null
                ? card
                : new Card(card.step(), on(old.x(), card.x()), on(old.y(), card.y()), card.face());
    }

    /** How far a card is from its place. */
    private Point2D off(StepId step) {
        Card there = to.cards().get(step);
        Card now = cards.get(step);
        return new Point2D.Double(now.x() - there.x(), now.y() - there.y());
    }

    private Route route(Route route) {
        Route old = from.routes().get(route.link());
        int corners = route.points().size();
        List<Point2D> points = new ArrayList<>();
        for (int place = 0; place < corners; place++) {
            Point2D end = route.points().get(place);
            if (old != null && old.points().size() == corners) {
                Point2D start = old.points().get(place);
                points.add(at(on(start.getX(), end.getX()), on(start.getY(), end.getY())));
            } else {
                points.add(along(route.link(), end, (double) place / (corners - 1)));
            }
        }
        return new Route(route.link(), points, route.critical());
    }

    /** A corner of a link that had another form before, as far off as its two steps are. */
    private Point2D along(LinkEnds link, Point2D corner, double share) {
        Point2D first = off(link.before());
        Point2D last = off(link.after());
        return at(
                corner.getX() + first.getX() + share * (last.getX() - first.getX()),
                corner.getY() + first.getY() + share * (last.getY() - first.getY()));
    }

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }

    private RungLine rung(RungLine rung) {
        Point2D left = off(rung.left());
        Point2D right = rung.broken() ? left : off(rung.right());
        return new RungLine(
                rung.left(),
                rung.right(),
                rung.x1() + left.getX(),
                rung.y1() + left.getY(),
                rung.x2() + right.getX(),
                rung.y2() + right.getY(),
                rung.label(),
                rung.broken());
    }

    /** An empty place goes with the step whose counterstep is missing. */
    private List<EmptyBox> emptyBoxes() {
        return to.emptyBoxes().stream()
                .map(
                        box -> {
                            Point2D off = off(box.off());
                            return new EmptyBox(
                                    box.off(),
                                    box.x() + off.getX(),
                                    box.y() + off.getY(),
                                    box.mark(),
                                    box.items());
                        })
                .toList();
    }
}
