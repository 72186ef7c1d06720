package counterstep.editor.canvas;

import counterstep.mirror.Column;
import counterstep.mirror.EmptyPlace;
import counterstep.mirror.MirrorLayout;
import counterstep.mirror.Rung;
import counterstep.mirror.RungItem;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The mirror layout in pixels at 100 %.
 *
 * @param places upper left corners of steps
 * @param rungs pairs of a step and its counterstep
 * @param emptyPlaces removals that nothing puts back
 */
record Columns(Map<StepId, Point2D> places, List<Rung> rungs, List<EmptyPlace> emptyPlaces) {
    static final Columns NONE = new Columns(Map.of(), List.of(), List.of());
    private static final double OFF = 6;

    static Columns of(MirrorLayout layout) {
        Map<StepId, Point2D> places = new LinkedHashMap<>();
        layout.cells()
                .forEach(
                        (step, cell) ->
                                places.put(step, corner(cell.column() == Column.LEFT, cell.row())));
        return new Columns(places, layout.rungs(), layout.emptyPlaces());
    }

    private static Point2D corner(boolean left, double row) {
        return new Point2D.Double(left ? 0 : Measures.RIGHT_COLUMN, row * Measures.ROW);
    }

    /** Places for all steps; one that is not known yet stands beside the step before it. */
    Map<StepId, Point2D> forAll(Procedure procedure) {
        Map<StepId, Point2D> all = new LinkedHashMap<>();
        double last = 0;
        for (Step step : procedure.steps()) {
            Point2D known = places.get(step.id());
            boolean left = step.phase().compareTo(Phase.REASSEMBLY) < 0;
            double beside = all.isEmpty() ? 0 : last + (left ? 0.5 : -0.5);
            Point2D place = known == null ? corner(left, beside) : known;
            all.put(step.id(), place);
            last = place.getY() / Measures.ROW;
        }
        return all;
    }

    /**
     * Rungs between steps that are there, from edge to edge. Between two folded phases there is
     * one; one between a folded phase and a step is left out.
     */
    List<RungLine> lines(Map<StepId, Card> cards, Folding folding, Index index) {
        ItemWords words = new ItemWords(index);
        List<RungLine> lines = new ArrayList<>();
        Map<List<Card>, Integer> folded = new LinkedHashMap<>();
        for (Rung rung : rungs) {
            Card left = cards.get(folding.shown(rung.left()));
            Card right = cards.get(folding.shown(rung.right()));
            if (left == null || right == null || left.isFolded() != right.isFolded()) {
                continue;
            }
            if (left.isFolded()) {
                folded.merge(List.of(left, right), 1, Integer::sum);
            } else {
                lines.add(line(left, right, words.of(counts(rung.items(), index))));
            }
        }
        folded.forEach(
                (ends, pairs) ->
                        lines.add(
                                line(
                                        ends.get(0),
                                        ends.get(1),
                                        pairs == 1 ? "1 pair" : pairs + " pairs")));
        for (EmptyPlace empty : emptyPlaces) {
            Card left = cards.get(empty.left());
            if (left != null && !left.isFolded()) {
                lines.add(broken(left, folding.drawn(corner(false, empty.row()))));
            }
        }
        return lines;
    }

    private static RungLine broken(Card left, Point2D box) {
        return new RungLine(
                left.step(),
                left.step(),
                left.x() + Measures.WIDTH + OFF,
                left.centreY(),
                box.getX() - OFF,
                box.getY() + Measures.HEIGHT / 2,
                "",
                true);
    }

    private static RungLine line(Card left, Card right, String label) {
        return new RungLine(
                left.step(),
                right.step(),
                left.x() + Measures.WIDTH + OFF,
                left.centreY(),
                right.x() - OFF,
                right.centreY(),
                label,
                false);
    }

    /** Empty places beside steps that are there. */
    List<EmptyBox> emptyBoxes(Map<StepId, Card> cards, Folding folding, Index index) {
        ItemWords words = new ItemWords(index);
        List<EmptyBox> boxes = new ArrayList<>();
        for (EmptyPlace empty : emptyPlaces) {
            Map<ItemId, Integer> counts = counts(empty.items(), index);
            boolean there = cards.containsKey(empty.left()) && !folding.isFolded(empty.left());
            if (there && !counts.isEmpty()) {
                Point2D box = folding.drawn(corner(false, empty.row()));
                boxes.add(
                        new EmptyBox(
                                empty.left(),
                                box.getX(),
                                box.getY(),
                                words.mark(counts),
                                words.of(counts)));
            }
        }
        return boxes;
    }

    /** Counts by item, of items that are still there. */
    private static Map<ItemId, Integer> counts(List<RungItem> items, Index index) {
        Map<ItemId, Integer> counts = new LinkedHashMap<>();
        items.stream()
                .filter(item -> index.findItem(item.item()).isPresent())
                .forEach(item -> counts.merge(item.item(), item.count(), Integer::sum));
        return counts;
    }
}
