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
 * @param cards steps in page order; a folded phase goes by the id of its first step
 * @param routes links that are drawn
 * @param following links that follow from others
 * @param proposed links that are proposed, not drawn
 * @param rungs what joins step and counterstep
 * @param emptyBoxes places of countersteps that are not there
 * @param folding what stands behind which card
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
        Folding folding,
        Selection selection,
        Rectangle2D bounds) {
    static final Scene EMPTY =
            of(
                    Map.of(),
                    Map.of(),
                    Set.of(),
                    Set.of(),
                    List.of(),
                    List.of(),
                    Folding.NONE,
                    Selection.NONE);

    /** A scene, measured once. */
    static Scene of(
            Map<StepId, Card> cards,
            Map<LinkEnds, Route> routes,
            Set<LinkEnds> following,
            Set<LinkEnds> proposed,
            List<RungLine> rungs,
            List<EmptyBox> emptyBoxes,
            Folding folding,
            Selection selection) {
        Rectangle2D bounds = bounds(cards, routes, emptyBoxes);
        return new Scene(
                cards, routes, following, proposed, rungs, emptyBoxes, folding, selection, bounds);
    }

    boolean isEmpty() {
        return cards.isEmpty();
    }

    /** The card of a step that is drawn itself. */
    Optional<Card> card(StepId step) {
        return folding.isFolded(step) ? Optional.empty() : standsFor(step);
    }

    /** The card of a step, or of the folded phase that it is in. */
    Optional<Card> standsFor(StepId step) {
        return Optional.ofNullable(cards.get(folding.shown(step)));
    }

    /** What is selected, in words. */
    String said(Selection selected) {
        return selected.steps().stream()
                .flatMap(step -> standsFor(step).stream())
                .map(card -> card.face().said())
                .distinct()
                .reduce((one, other) -> one + "; " + other)
                .orElse("nothing selected");
    }

    /** Whether a step, or one in it, is selected. */
    boolean isSelected(Card card) {
        return card.steps().stream().anyMatch(selection.steps()::contains);
    }

    /** Whether a link between two cards is selected. */
    boolean isSelected(LinkEnds link) {
        return selection.links().stream().map(folding::shown).anyMatch(link::equals);
    }

    /** The step at a point of the drawing, which no folded phase is. */
    Optional<StepId> stepAt(Point2D point, double beyond) {
        return cardAt(point, beyond).filter(card -> !card.isFolded()).map(Card::step);
    }

    /** The topmost card at a point of the drawing. */
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
