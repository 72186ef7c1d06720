package counterstep.toolchange;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.stream.Stream;

/**
 * The model of the benchmark for CP-SAT, made to be quick: 'this step is done by that turn' is one
 * yes or no, so that all but 'one tool a turn' are clauses of two or three. Steps have one tool
 * each. A step lies behind as many turns as the longest chain before it forces, and before as many
 * as the chain after it; two turns in succession have different tools.
 */
final class TurnsModel {
    static {
        Loader.loadNativeLibraries();
    }

    private final Puzzle puzzle;
    private final int turns;
    private final CpModel model = new CpModel();
    private final Literal[][] toolIn;
    private final Literal[][] doneBy;

    private TurnsModel(Puzzle puzzle, int turns) {
        this.puzzle = puzzle;
        this.turns = turns;
        toolIn = new Literal[turns][];
        for (int turn = 0; turn < turns; turn++) {
            toolIn[turn] = some(puzzle.tools());
            model.addExactlyOne(toolIn[turn]);
            for (int tool = 0; turn > 0 && tool < puzzle.tools(); tool++) {
                either(toolIn[turn - 1][tool].not(), toolIn[turn][tool].not());
            }
        }
        doneBy = new Literal[puzzle.size()][];
        TurnsOnChains chains = new TurnsOnChains(puzzle);
        for (int step = 0; step < puzzle.size(); step++) {
            doneBy[step] = step(tool(step), chains.before(step), chains.after(step));
        }
        puzzle.links().forEach(this::keep);
    }

    /** Whether all can be done in so many turns. */
    static CpModel possible(Puzzle puzzle, int turns) {
        return new TurnsModel(puzzle, turns).model;
    }

    /** The fewest turns, not more than so many and not fewer than some. */
    static CpModel fewest(Puzzle puzzle, int atLeast, int atMost) {
        TurnsModel all = new TurnsModel(puzzle, atMost);
        Literal[] open = all.some(atMost - 1);
        for (int turn = 0; turn < open.length; turn++) {
            for (Literal[] step : all.doneBy) {
                all.either(open[turn], step[turn]);
            }
            if (turn > 0) {
                all.either(open[turn].not(), open[turn - 1]);
            }
        }
        LinearExpr used = LinearExpr.newBuilder().addSum(open).add(1).build();
        all.model.addGreaterOrEqual(used, atLeast);
        all.model.minimize(used);
        return all.model;
    }

    private int tool(int step) {
        return puzzle.words().get(step)[0];
    }

    private Literal[] some(int count) {
        return Stream.generate(() -> model.newBoolVar("")).limit(count).toArray(Literal[]::new);
    }

    private void either(Literal... one) {
        model.addBoolOr(one);
    }

    /** Whether a step is done by each turn: not before its first, surely by its last. */
    private Literal[] step(int tool, int before, int after) {
        Literal[] by = new Literal[turns];
        for (int turn = 0; turn < turns; turn++) {
            if (turn < before) {
                by[turn] = model.falseLiteral();
            } else {
                by[turn] = turn >= turns - 1 - after ? model.trueLiteral() : model.newBoolVar("");
                Literal earlier = turn == 0 ? model.falseLiteral() : by[turn - 1];
                either(by[turn].not(), earlier, toolIn[turn][tool]);
                either(earlier.not(), by[turn]);
            }
        }
        return by;
    }

    private void keep(int[] link) {
        int apart = tool(link[0]) == tool(link[1]) ? 0 : 1;
        for (int turn = 0; turn < turns; turn++) {
            Literal later = doneBy[link[1]][turn];
            either(
                    later.not(),
                    turn < apart ? model.falseLiteral() : doneBy[link[0]][turn - apart]);
        }
    }
}
