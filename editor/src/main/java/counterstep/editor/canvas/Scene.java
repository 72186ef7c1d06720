package counterstep.editor.canvas;

import counterstep.editor.desk.Selection;
import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All that is drawn at one moment, in pixels at 100 %.
 *
 * @param cards steps in page order
 * @param routes links that are drawn
 * @param following links that follow from others
 * @param proposed links that are proposed, not drawn
 * @param rungs what joins step and counterstep
 * @param emptyBoxes places of countersteps that are not there
 * @param selection what is selected
 * @param bounds what holds everything; two empty columns where there is nothing
 */
record Scene(
        Map<StepId, Card> cards,
        Map<LinkEnds, Route> routes,
        Set<LinkEnds> following,
        Set<LinkEnds> proposed,
        List<RungLine> rungs,
        List<EmptyBox> emptyBoxes,
        Selection selection,
        Rectangle2D bounds) {
    static final Scene EMPTY =
            of(Map.of(), Map.of(), Set.of(), Set.of(), List.of(), List.of(), Selection.NONE);

    /** A scene, measured once. */
    static Scene of(
            Map<StepId, Card> cards,
            Map<LinkEnds, Route> routes,
            Set<LinkEnds> following,
            Set<LinkEnds> proposed,
            List<RungLine> rungs,
            List<EmptyBox> emptyBoxes,
            Selection selection) {
        Rectangle2D bounds = bounds(cards, routes, emptyBoxes);
        return new Scene(cards, routes, following, proposed, rungs, emptyBoxes, selection, bounds);
    }

    boolean isEmpty() {
        return cards.isEmpty();
    }

    Optional<Card> card(StepId step) {
        return Optional.ofNullable(cards.get(step));
    }

    /** The topmost step at a point of the drawing. */
    Optional<Card> cardAt(Point2D point, double beyond) {
        Card found = null;
        for (Card card : cards.values()) {
            Rectangle2D box = card.box();
            box.setRect(
                    box.getX() - beyond,
                    box.getY() - beyond,
                    box.getWidth() + 2 * beyond,
                    box.getHeight() + 2 * beyond);
            if (box.contains(point)) {
                found = card;
            }
        }
        return Optional.ofNullable(found);
    }

    private static Rectangle2D bounds(
            Map<StepId, Card> cards, Map<LinkEnds, Route> routes, List<EmptyBox> emptyBoxes) {
        Rectangle2D bounds =
                new Rectangle2D.Double(
                        0, 0, Measures.RIGHT_COLUMN + Measures.WIDTH, Measures.HEIGHT);
        cards.values().forEach(card -> bounds.add(card.box()));
        routes.values().forEach(route -> bounds.add(route.bounds()));
        for (EmptyBox empty : emptyBoxes) {
            bounds.add(
                    new Rectangle2D.Double(empty.x(), empty.y(), Measures.WIDTH, Measures.HEIGHT));
        }
        return bounds;
    }
}
