package counterstep.mirror;

import counterstep.mirror.LevelPairs.Candidate;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** Deals out the rows from the top: between two level pairs each step has a row of its own. */
final class Rows {
    private final Counterparts counterparts;
    private final Map<StepId, Cell> cells = new HashMap<>();
    private final List<EmptyPlace> emptyPlaces = new ArrayList<>();
    private final List<Step> left;
    private final List<Step> right;
    private int nextLeft;
    private int nextRight;
    private int row;

    Rows(Procedure procedure, Counterparts counterparts) {
        this.counterparts = counterparts;
        left = Stream.of(Phase.PREPARE, Phase.TEARDOWN).flatMap(in(procedure)).toList();
        List<Step> upwards =
                new ArrayList<>(
                        Stream.of(Phase.REASSEMBLY, Phase.VERIFY).flatMap(in(procedure)).toList());
        Collections.reverse(upwards);
        right = upwards;
        for (Candidate level : LevelPairs.choose(candidates())) {
            fillTo(level.left(), level.right());
            cells.put(left.get(nextLeft).id(), new Cell(Column.LEFT, row));
            cells.put(right.get(nextRight++).id(), new Cell(Column.RIGHT, row++));
            placeMissing(left.get(nextLeft++).id());
        }
        fillTo(left.size(), right.size());
        foot(Stream.of(Phase.SERVICE).flatMap(in(procedure)).toList());
    }

    private static Function<Phase, Stream<Step>> in(Procedure procedure) {
        return phase -> procedure.steps().stream().filter(step -> step.phase() == phase);
    }

    private List<Candidate> candidates() {
        Map<StepId, Integer> onLeft = places(left);
        Map<StepId, Integer> onRight = places(right);
        List<Candidate> candidates = new ArrayList<>();
        counterparts
                .firstReturns()
                .forEach(
                        (ends, weight) -> {
                            if (onLeft.containsKey(ends.off())
                                    && onRight.containsKey(ends.back())) {
                                candidates.add(
                                        new Candidate(
                                                onLeft.get(ends.off()),
                                                onRight.get(ends.back()),
                                                weight));
                            }
                        });
        return candidates;
    }

    private static Map<StepId, Integer> places(List<Step> column) {
        Map<StepId, Integer> places = new HashMap<>();
        column.forEach(step -> places.put(step.id(), places.size()));
        return places;
    }

    private void fillTo(int leftEnd, int rightEnd) {
        while (nextLeft < leftEnd || nextRight < rightEnd) {
            if (nextRight == rightEnd || nextLeft < leftEnd && leftGoesFirst()) {
                single(left.get(nextLeft++).id());
            } else {
                cells.put(right.get(nextRight++).id(), new Cell(Column.RIGHT, row++));
            }
        }
    }

    /** Prepare on top, then verify, then what is taken off, then what is put on. */
    private boolean leftGoesFirst() {
        return left.get(nextLeft).phase() == Phase.PREPARE
                || right.get(nextRight).phase() != Phase.VERIFY;
    }

    private void single(StepId step) {
        cells.put(step, new Cell(Column.LEFT, row));
        placeMissing(step);
        row = Math.max(row, cells.get(step).row() + 1);
    }

    /** On the step's own row where its right is free, else on a row of its own below. */
    private void placeMissing(StepId step) {
        List<RungItem> items = counterparts.missing(step);
        if (!items.isEmpty()) {
            emptyPlaces.add(new EmptyPlace(step, row++, items));
        }
    }

    private void foot(List<Step> service) {
        int top = row;
        int half = (service.size() + 1) / 2;
        for (int place = 0; place < service.size(); place++) {
            boolean down = place < half;
            int at = down ? place : 2 * half - 1 - place;
            Cell cell = new Cell(down ? Column.LEFT : Column.RIGHT, top + at);
            cells.put(service.get(place).id(), cell);
        }
        row = top + half;
        boolean free = service.size() % 2 == 1;
        for (int place = 0; place < half; place++) {
            StepId step = service.get(place).id();
            List<RungItem> items = counterparts.missing(step);
            if (!items.isEmpty()) {
                boolean beside = free && place == 0;
                emptyPlaces.add(new EmptyPlace(step, beside ? top : row++, items));
            }
        }
    }

    Map<StepId, Cell> cells() {
        return cells;
    }

    List<EmptyPlace> emptyPlaces() {
        return emptyPlaces;
    }

    int count() {
        return row;
    }
}
