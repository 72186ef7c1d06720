package counterstep.toolchange;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import counterstep.model.GroupRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * 'Can all be done in so many turns?' put to CP-SAT, a general solver: turns are places 0, 1, 2 and
 * so on with one tool each, a step begins in one of them and takes as many as it has tools.
 *
 * <p>A step of several tools and a group are each done whole: for any other step or group, all of
 * it lies not after the turn in which they begin, or not before the turn in which they end. That is
 * enough, since within one turn every order costs the same.
 */
final class TurnsBySolver {
    static {
        Loader.loadNativeLibraries();
    }

    /** What the solver says; unknown when it gives up. */
    enum Answer {
        YES,
        NO,
        UNKNOWN
    }

    /** From the turn of its beginning to the turn of its end. */
    private record Span(IntVar first, LinearExpr last) {}

    private final Puzzle puzzle;
    private final int turns;
    private final CpModel model = new CpModel();
    private final Literal[][] toolIn;
    private final List<Span> steps = new ArrayList<>();
    private final List<Span> groups = new ArrayList<>();

    private TurnsBySolver(Puzzle puzzle, int turns) {
        this.puzzle = puzzle;
        this.turns = turns;
        toolIn = new Literal[turns][];
        for (int turn = 0; turn < turns; turn++) {
            toolIn[turn] = some(puzzle.tools());
            model.addExactlyOne(toolIn[turn]);
        }
        puzzle.words().forEach(word -> steps.add(step(word)));
        puzzle.groups().forEach(group -> groups.add(group(group)));
        puzzle.links().forEach(this::keep);
        keepWhole();
    }

    /**
     * Asks the solver.
     *
     * @param effort how long it may try, in its own measure, which does not depend on the machine
     */
    static Answer possible(Puzzle puzzle, int turns, double effort) {
        if (!puzzle.isPossible() || puzzle.words().stream().anyMatch(word -> word.length > turns)) {
            return Answer.NO;
        }
        return turns == 0 ? Answer.YES : new TurnsBySolver(puzzle, turns).solved(effort);
    }

    /** Whether an order is among those that the solver looks for: else it would ask too much. */
    static boolean allows(Puzzle puzzle, int turns, List<Integer> order) {
        TurnsBySolver fixed = new TurnsBySolver(puzzle, turns);
        int turn = 0;
        int held = -1;
        for (int step : order) {
            int[] word = puzzle.words().get(step);
            turn += word.length > 0 && held >= 0 && word[0] != held ? 1 : 0;
            fixed.model.addEquality(fixed.steps.get(step).first, turn);
            turn += Math.max(0, word.length - 1);
            held = word.length > 0 ? word[word.length - 1] : held;
        }
        return fixed.solved(1) == Answer.YES;
    }

    private Answer solved(double effort) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setMaxDeterministicTime(effort);
        return switch (solver.solve(model)) {
            case OPTIMAL, FEASIBLE -> Answer.YES;
            case INFEASIBLE -> Answer.NO;
            case UNKNOWN -> Answer.UNKNOWN;
            case MODEL_INVALID, UNRECOGNIZED ->
                    throw new IllegalStateException("the solver does not read the model");
        };
    }

    private Literal[] some(int count) {
        return Stream.generate(() -> model.newBoolVar("")).limit(count).toArray(Literal[]::new);
    }

    private Span step(int[] word) {
        int longer = Math.max(0, word.length - 1);
        IntVar first = model.newIntVar(0, turns - 1 - longer, "");
        Literal[] begins = some(turns - longer);
        model.addExactlyOne(begins);
        LinearExprBuilder where = LinearExpr.newBuilder();
        for (int turn = 0; turn < begins.length; turn++) {
            where.addTerm(begins[turn], turn);
            for (int place = 0; place < word.length; place++) {
                model.addImplication(begins[turn], toolIn[turn + place][word[place]]);
            }
        }
        model.addEquality(first, where);
        return new Span(first, LinearExpr.affine(first, 1, longer));
    }

    private Span group(Puzzle.Company group) {
        IntVar first = model.newIntVar(0, turns - 1, "");
        IntVar last = model.newIntVar(0, turns - 1, "");
        Span[] members = group.steps().stream().map(steps::get).toArray(Span[]::new);
        model.addMinEquality(first, Arrays.stream(members).map(Span::first).toList());
        model.addMaxEquality(last, Arrays.stream(members).map(Span::last).toList());
        for (int at = 1; at < members.length && group.rule() == GroupRule.RIGHT_AFTER; at++) {
            model.addLessOrEqual(members[at - 1].last, members[at].first);
        }
        return new Span(first, LinearExpr.affine(last, 1, 0));
    }

    /** Not before the turn of the other; if the tool must change between them, in a later one. */
    private void keep(int[] link) {
        int[] earlier = puzzle.words().get(link[0]);
        int[] later = puzzle.words().get(link[1]);
        boolean another =
                earlier.length > 0 && later.length > 0 && earlier[earlier.length - 1] != later[0];
        Span from = steps.get(link[0]);
        Span to = steps.get(link[1]);
        model.addLessOrEqual(LinearExpr.newBuilder().add(from.last).add(another ? 1 : 0), to.first);
        int[] groupOf = puzzle.groupOf();
        if (groupOf[link[0]] != groupOf[link[1]]) {
            Span whole = groupOf[link[0]] < 0 ? from : groups.get(groupOf[link[0]]);
            Span other = groupOf[link[1]] < 0 ? to : groups.get(groupOf[link[1]]);
            model.addLessOrEqual(whole.last, other.first);
        }
    }

    private void keepWhole() {
        int[] groupOf = puzzle.groupOf();
        for (int step = 0; step < steps.size(); step++) {
            for (int other = 0; other < steps.size(); other++) {
                boolean bothLong = isLong(step) && isLong(other);
                if (isLong(step) && (bothLong ? step < other : step != other)) {
                    keepApart(steps.get(step), steps.get(other));
                }
            }
            for (int group = 0; group < groups.size(); group++) {
                if (groupOf[step] != group) {
                    keepApart(groups.get(group), steps.get(step));
                }
            }
        }
        for (int group = 0; group < groups.size(); group++) {
            for (int other = 0; other < group; other++) {
                keepApart(groups.get(group), groups.get(other));
            }
        }
    }

    private boolean isLong(int step) {
        return puzzle.words().get(step).length > 1;
    }

    private void keepApart(Span one, Span other) {
        BoolVar oneFirst = model.newBoolVar("");
        model.addLessOrEqual(one.last, other.first).onlyEnforceIf(oneFirst);
        model.addLessOrEqual(other.last, one.first).onlyEnforceIf(oneFirst.not());
    }
}
