package counterstep.editor.canvas;

import counterstep.mirror.EmptyPlace;
import counterstep.model.LinkEnds;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Where everything stands while phases are folded. A folded phase stands in its topmost row, or,
 * where all its steps were moved, in the place of the topmost of them; teardown and reassembly,
 * both folded, stand level. Rows that are empty then are left out; what stands below them moves up,
 * moved steps too, and goes back by the same way.
 *
 * @param places upper left corners of all steps with nothing folded
 * @param phases what is folded and has steps
 * @param heads the card that stands for a folded step
 * @param leftOut rows that are left out, from the top
 */
record Folding(
        Map<StepId, Point2D> places,
        Map<Phase, FoldedPhase> phases,
        Map<StepId, StepId> heads,
        List<Integer> leftOut) {
    static final Folding NONE = new Folding(Map.of(), Map.of(), Map.of(), List.of());

    /** A document as the columns have it, with some phases folded. */
    static Folding of(Procedure procedure, Columns columns, Set<Phase> folded) {
        Map<StepId, Point2D> places = columns.forAll(procedure);
        Map<Phase, List<Step>> inside = new EnumMap<>(Phase.class);
        for (Step step : procedure.steps()) {
            step.place().ifPresent(at -> places.put(step.id(), at(at.x(), at.y())));
            if (folded.contains(step.phase())) {
                inside.computeIfAbsent(step.phase(), phase -> new ArrayList<>()).add(step);
            }
        }
        return inside.isEmpty()
                ? new Folding(places, Map.of(), Map.of(), List.of())
                : new Rows(procedure, columns, places, inside).folding();
    }

    boolean isFolded(StepId step) {
        return heads.containsKey(step);
    }

    /** The step by whose id the card goes that stands for a step. */
    StepId shown(StepId step) {
        return heads.getOrDefault(step, step);
    }

    /** A link between the cards that stand for its steps. */
    LinkEnds shown(LinkEnds link) {
        return heads.isEmpty() ? link : new LinkEnds(shown(link.before()), shown(link.after()));
    }

    /** Whether both ends of a link stand behind one card. */
    boolean isInside(LinkEnds link) {
        return !heads.isEmpty() && shown(link.before()).equals(shown(link.after()));
    }

    /** Where a place is drawn. */
    Point2D drawn(Point2D place) {
        double above =
                leftOut.stream().filter(row -> (row + 1) * Measures.ROW <= place.getY()).count();
        return at(place.getX(), place.getY() - above * Measures.ROW);
    }

    /** The place that is drawn at a point. */
    Point2D undrawn(Point2D point) {
        double y = point.getY();
        for (int row : leftOut) {
            y += row * Measures.ROW <= y ? Measures.ROW : 0;
        }
        return at(point.getX(), y);
    }

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }

    /** Finds the rows of the folded phases and those that nothing stands in. */
    private static final class Rows {
        private final Procedure procedure;
        private final Columns columns;
        private final Map<StepId, Point2D> places;
        private final Map<Phase, List<Step>> inside;
        private final Map<StepId, StepId> heads = new HashMap<>();
        private final TreeSet<Integer> taken = new TreeSet<>();
        private final TreeSet<Integer> free = new TreeSet<>();

        Rows(
                Procedure procedure,
                Columns columns,
                Map<StepId, Point2D> places,
                Map<Phase, List<Step>> inside) {
            this.procedure = procedure;
            this.columns = columns;
            this.places = places;
            this.inside = inside;
            inside.values()
                    .forEach(
                            steps ->
                                    steps.forEach(step -> heads.put(step.id(), steps.get(0).id())));
        }

        Folding folding() {
            for (Step step : procedure.steps()) {
                touched(places.get(step.id()).getY())
                        .forEach(row -> (heads.containsKey(step.id()) ? free : taken).add(row));
            }
            for (EmptyPlace empty : columns.emptyPlaces()) {
                (heads.containsKey(empty.left()) ? free : taken).add(empty.row());
            }
            Map<Phase, Point2D> corners = new EnumMap<>(Phase.class);
            inside.forEach((phase, steps) -> corners.put(phase, top(steps)));
            level(corners);
            corners.values().forEach(at -> touched(at.getY()).forEach(taken::add));
            free.removeAll(taken);
            Map<Phase, FoldedPhase> drawn = new LinkedHashMap<>();
            Folding rows = new Folding(places, Map.of(), heads, List.copyOf(free));
            inside.forEach(
                    (phase, steps) ->
                            drawn.put(
                                    phase, new FoldedPhase(steps, rows.drawn(corners.get(phase)))));
            return new Folding(places, drawn, heads, List.copyOf(free));
        }

        private static IntStream touched(double y) {
            int first = (int) Math.floor(y / Measures.ROW);
            int last = (int) Math.floor((y + Measures.HEIGHT) / Measures.ROW);
            return IntStream.rangeClosed(first, last);
        }

        private Point2D top(List<Step> steps) {
            List<Step> kept = steps.stream().filter(step -> step.place().isEmpty()).toList();
            List<Step> asked = kept.isEmpty() ? steps : kept;
            Point2D top = places.get(asked.get(0).id());
            for (Step step : asked) {
                Point2D place = places.get(step.id());
                top = place.getY() < top.getY() ? place : top;
            }
            return top;
        }

        private void level(Map<Phase, Point2D> corners) {
            Point2D down = corners.get(Phase.TEARDOWN);
            Point2D up = corners.get(Phase.REASSEMBLY);
            if (down != null
                    && up != null
                    && inColumn(Phase.TEARDOWN)
                    && inColumn(Phase.REASSEMBLY)) {
                double row = Math.max(down.getY(), up.getY());
                corners.put(Phase.TEARDOWN, at(down.getX(), row));
                corners.put(Phase.REASSEMBLY, at(up.getX(), row));
            }
        }

        private boolean inColumn(Phase phase) {
            return inside.get(phase).stream().anyMatch(step -> step.place().isEmpty());
        }
    }
}
