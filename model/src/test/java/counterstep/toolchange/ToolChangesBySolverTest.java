package counterstep.toolchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.toolchange.TurnsBySolver.Answer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * The fewest changes against CP-SAT, which must prove that no order has one fewer. The order found
 * is counted again without the planner, and the solver must allow it: then it looks among enough.
 * What the solver cannot prove in a short time is not counted as agreed.
 */
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
final class ToolChangesBySolverTest {
    private static final double EFFORT = 4;
    private static final int GRAPHS = 140;

    /** What came of one puzzle: the solver agrees, or one of the two could not tell. */
    private enum Outcome {
        AGREED,
        IMPOSSIBLE,
        NOT_PROVED_HERE,
        NOT_PROVED_THERE
    }

    private static Puzzle shape(int number) {
        int size = 20 + number % 5 * 10;
        int tools = 3 + number % 4;
        int width = 2 + number % 3;
        return switch (number % 4) {
            case 0 ->
                    Puzzle.of(
                            number % 8 == 0
                                    ? TeardownShapes.mirrored(size, tools, width, number)
                                    : TeardownShapes.entwined(size, tools, width, number));
            case 1 -> Puzzle.of(TeardownShapes.half(size, tools, width, number));
            case 2 -> RandomPuzzles.layers(size, tools, width, number);
            default -> RandomPuzzles.near(size, tools, 2, number);
        };
    }

    private static Puzzle assembly(String row) {
        String[] cells = row.split(" ");
        try (InputStream stream =
                ToolChangesBySolverTest.class.getResourceAsStream("/salbp/" + cells[0] + ".IN2")) {
            List<String> lines =
                    new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .map(String::strip)
                            .toList();
            int size = Integer.parseInt(lines.get(0));
            List<int[]> links = new ArrayList<>();
            for (String line : lines.subList(size + 1, lines.indexOf("-1,-1"))) {
                String[] ends = line.split(",");
                links.add(new int[] {Integer.parseInt(ends[0]) - 1, Integer.parseInt(ends[1]) - 1});
            }
            return RandomPuzzles.dealt(size, links, Integer.parseInt(cells[1]), size);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static Outcome turns(String name, Puzzle puzzle) {
        FewestTurns found = FewestTurns.of(puzzle.graph(), () -> false);
        assertEquals(found.count(), found.atLeast(), () -> name + " is proved");
        assertEquals(found.count(), puzzle.recounted(found.order()), name);
        return least(name, puzzle, found.count(), found.order());
    }

    private static Outcome least(String name, Puzzle puzzle, int count, List<Integer> order) {
        assertTrue(TurnsBySolver.allows(puzzle, count, order), name);
        Answer fewer = TurnsBySolver.possible(puzzle, count - 1, EFFORT);
        assertNotEquals(Answer.YES, fewer, () -> name + " needs fewer than " + count);
        return fewer == Answer.NO ? Outcome.AGREED : Outcome.NOT_PROVED_THERE;
    }

    private static Outcome changes(String name, Puzzle puzzle) {
        Procedure procedure = PuzzleProcedures.of(puzzle);
        Optional<FewestToolChanges> fewest =
                FewestToolChanges.of(
                        procedure, Precedence.of(procedure), Tooling.of(procedure), () -> false);
        assertEquals(puzzle.isPossible(), fewest.isPresent(), name);
        return fewest.map(found -> changes(name, puzzle, found)).orElse(Outcome.IMPOSSIBLE);
    }

    private static Outcome changes(String name, Puzzle puzzle, FewestToolChanges found) {
        List<Integer> order = PuzzleProcedures.places(found.order());
        List<Integer> nearest = PuzzleProcedures.places(found.nearestToPage(() -> false));
        assertEquals(found.count(), puzzle.recounted(order), name);
        assertEquals(found.count(), puzzle.recounted(nearest), name);
        assertTrue(found.atLeast() <= found.count(), name);
        if (found.proved()) {
            return least(name, puzzle, found.count(), nearest);
        }
        Answer below = TurnsBySolver.possible(puzzle, found.atLeast() - 1, EFFORT);
        assertNotEquals(Answer.YES, below, () -> name + " can be had for less than the bound");
        return Outcome.NOT_PROVED_HERE;
    }

    private static void assertAgreed(int atLeast, Stream<Outcome> outcomes) {
        List<Outcome> all = outcomes.toList();
        long agreed = all.stream().filter(Outcome.AGREED::equals).count();
        assertTrue(agreed >= atLeast, () -> agreed + " agreed of " + all);
    }

    @Test
    void graphsOfTwentyToSixtySteps() {
        assertAgreed(
                GRAPHS,
                IntStream.range(0, GRAPHS)
                        .parallel()
                        .mapToObj(number -> turns("graph " + number, shape(number))));
    }

    @Test
    void proceduresWithStepsOfSeveralToolsAndGroups() {
        assertAgreed(
                50,
                IntStream.range(0, 80)
                        .parallel()
                        .mapToObj(
                                number ->
                                        changes(
                                                "procedure " + number,
                                                RandomPuzzles.mixed(
                                                        20 + number % 5 * 5,
                                                        3 + number % 3,
                                                        number))));
    }

    @Test
    void assemblyGraphsOfTheLiteratureWithToolsDealtAtRandom() {
        assertAgreed(
                20,
                Stream.of(
                                "MERTENS",
                                "BOWMAN8",
                                "JAESCHKE",
                                "JACKSON",
                                "BUXEY",
                                "SAWYER30",
                                "KILBRID",
                                "TONGE70",
                                "ARC83",
                                "BARTHOLD")
                        .flatMap(name -> Stream.of(name + " 3", name + " 6"))
                        .parallel()
                        .map(row -> turns(row, assembly(row))));
    }
}
