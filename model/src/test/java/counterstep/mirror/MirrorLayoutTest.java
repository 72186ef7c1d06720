package counterstep.mirror;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Mirrored;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class MirrorLayoutTest {
    private static LongStream starts() {
        return LongStream.range(0, 500);
    }

    /** The rows as 'left|right', a number for a step, '-' for nothing, '?' for an empty place. */
    private static List<String> rows(String... steps) {
        MirrorLayout layout = MirrorLayout.of(Mirrored.of(steps));
        String[][] grid = new String[layout.rows()][2];
        for (String[] row : grid) {
            row[0] = "-";
            row[1] = "-";
        }
        layout.emptyPlaces().forEach(empty -> grid[empty.row()][1] = "?");
        layout.cells()
                .forEach(
                        (step, cell) ->
                                grid[cell.row()][cell.column().ordinal()] =
                                        step.value().substring(1));
        return Arrays.stream(grid).map(row -> row[0] + "|" + row[1]).toList();
    }

    @Test
    void aMirroredTeardownStandsLevelThroughout() {
        assertEquals(
                List.of("1|6", "2|5", "3|4"),
                rows(
                        "T remove f1 1",
                        "T remove f2 1",
                        "T remove f3 1",
                        "R reinstall f3 1",
                        "R reinstall f2 1",
                        "R reinstall f1 1"));
    }

    @Test
    void aRemovalThatNothingPutsBackShowsAnEmptyPlaceBesideIt() {
        assertEquals(
                List.of("1|3", "2|?"),
                rows("T remove f1 1", "T remove f2 1 remove p1 1", "R reinstall f1 1"));
    }

    @Test
    void anEmptyPlaceStandsBelowWhereTheStepIsLevelWithAnother() {
        assertEquals(List.of("1|2", "-|?"), rows("T remove f1 1 remove p1 1", "R reinstall f1 1"));
    }

    @Test
    void whatIsPutBackInPartHasNoEmptyPlace() {
        assertEquals(List.of("1|2"), rows("T remove f1 5", "R reinstall f1 4"));
    }

    @Test
    void screwsThatAreBackButOnlyFingerTightHaveNoEmptyPlace() {
        assertEquals(
                List.of("1|-", "2|3"), rows("T loosen f1 3", "T remove f1 3", "R reinstall! f1 3"));
        assertEquals(List.of("1|?"), rows("T loosen f1 3"));
    }

    @Test
    void prepareStandsAboveVerifyAtTheTopRightAndServiceAcrossTheFoot() {
        assertEquals(
                List.of("1|-", "-|7", "2|6", "3|-", "4|5"),
                rows(
                        "P check p1 1",
                        "T remove f1 1",
                        "S clean p1 1",
                        "S clean p1 1",
                        "S clean p1 1",
                        "R reinstall f1 1",
                        "V check p1 1"));
    }

    @Test
    void aStepPutBackInTwoIsLevelWithTheFirst() {
        assertEquals(
                List.of("-|3", "1|2"),
                rows("T remove f1 4", "R reinstall! f1 2", "R reinstall f1 2"));
    }

    @Test
    void ofTwoRungsThatCrossTheOneWithMoreItemsIsLevel() {
        Procedure procedure =
                Mirrored.of(
                        "T remove f1 1",
                        "T remove f2 3 remove f3 1",
                        "R reinstall f1 1",
                        "R reinstall f2 3 reinstall f3 1");
        MirrorLayout layout = MirrorLayout.of(procedure);
        Rung slanting = new Rung(id("s1"), id("s3"), List.of(item("f1", 1)));
        Rung level = new Rung(id("s2"), id("s4"), List.of(item("f2", 3), item("f3", 1)));
        assertEquals(List.of(slanting, level), layout.rungs());
        assertTrue(layout.level(level));
    }

    private static StepId id(String value) {
        return new StepId(value);
    }

    private static RungItem item(String id, int count) {
        return new RungItem(new ItemId(id), count);
    }

    @Test
    void anEmptyDocumentHasNoRow() {
        MirrorLayout layout = MirrorLayout.of(Procedure.titled("empty", "Empty"));
        assertEquals(new MirrorLayout(Map.of(), List.of(), List.of(), 0), layout);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void noTwoStepsShareACellAndNoEmptyPlaceLiesUnderAStep(long start) {
        Procedure procedure = Mirrored.random(start);
        MirrorLayout layout = MirrorLayout.of(procedure);
        Set<Cell> taken = new HashSet<>(layout.cells().values());
        assertEquals(procedure.steps().size(), taken.size());
        for (EmptyPlace empty : layout.emptyPlaces()) {
            assertTrue(taken.add(new Cell(Column.RIGHT, empty.row())), empty::toString);
        }
        Set<Integer> rows = taken.stream().map(Cell::row).collect(Collectors.toSet());
        assertEquals(layout.rows(), rows.size());
        assertTrue(rows.stream().allMatch(row -> row >= 0 && row < layout.rows()));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void pageOrderRunsDownTheLeftAndUpTheRight(long start) {
        MirrorLayout layout = MirrorLayout.of(Mirrored.random(start));
        List<Integer> left = new ArrayList<>();
        List<Integer> right = new ArrayList<>();
        for (Cell cell : layout.cells().values()) {
            (cell.column() == Column.LEFT ? left : right).add(cell.row());
        }
        assertEquals(left.stream().sorted().toList(), left);
        assertEquals(right.stream().sorted((a, b) -> b - a).toList(), right);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void asManyPairsStandLevelAsTryingAllSetsFinds(long start) {
        Procedure procedure = Mirrored.random(start);
        MirrorLayout layout = MirrorLayout.of(procedure);
        List<int[]> pairs = firstReturns(procedure);
        int level = 0;
        for (int[] pair : pairs) {
            Cell off = layout.cells().get(procedure.steps().get(pair[0]).id());
            Cell back = layout.cells().get(procedure.steps().get(pair[1]).id());
            level += off.row() == back.row() ? 1 : 0;
        }
        assertEquals(mostLevel(pairs), level);
    }

    /** Page places of each removal above the foot and of the first putting back above the foot. */
    private static List<int[]> firstReturns(Procedure procedure) {
        Map<StepId, Step> steps =
                procedure.steps().stream().collect(Collectors.toMap(Step::id, Function.identity()));
        Map<String, int[]> first = new HashMap<>();
        for (Pair pair : Pairing.of(procedure)) {
            if (pair.back().isPresent()) {
                int off = procedure.pageNumber(pair.off()) - 1;
                int back = procedure.pageNumber(pair.back().get()) - 1;
                first.merge(
                        pair.off() + " " + pair.item(),
                        new int[] {off, back},
                        (one, two) -> one[1] <= two[1] ? one : two);
            }
        }
        return first.values().stream()
                .filter(
                        pair ->
                                steps.get(procedure.steps().get(pair[1]).id()).phase()
                                        != Phase.SERVICE)
                .toList();
    }

    /** Tries every set of pairs for one without a crossing and without a step at two levels. */
    private static int mostLevel(List<int[]> pairs) {
        int most = 0;
        for (int set = 0; set < 1 << pairs.size(); set++) {
            boolean drawable = true;
            for (int one = 0; one < pairs.size(); one++) {
                for (int two = 0; two < one; two++) {
                    if ((set >> one & 1) == 1 && (set >> two & 1) == 1) {
                        int left = Integer.compare(pairs.get(one)[0], pairs.get(two)[0]);
                        int right = Integer.compare(pairs.get(one)[1], pairs.get(two)[1]);
                        drawable &= left == -right;
                    }
                }
            }
            if (drawable) {
                most = Math.max(most, Integer.bitCount(set));
            }
        }
        return most;
    }
}
