package counterstep.toolchange;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleFunction;

/**
 * CP-SAT with two workers as a rival of the planner: the fewest turns asked for as such, and 'is it
 * possible in so many?' from the bound up; each on the puzzle as it is and folded. Only the
 * solver's own time counts: to build a model, to fold, and to find a bound and a first order are
 * free.
 */
final class Peer {
    private static final int WORKERS = 2;
    private static final double ENOUGH_MILLIS = 200;
    private static final int MOST_TIMES = 10;

    private final Clock clock;
    private final double limit;

    /**
     * What is known in the end.
     *
     * @param atLeast no order has fewer turns
     * @param atMost some order has so many
     * @param millis of the model that proved it first; of the limit when none did
     */
    record Result(int atLeast, int atMost, double millis) {
        boolean proved() {
            return atLeast == atMost;
        }

        /** Of two models the quicker proof, and all that both know. */
        private Result and(Result other) {
            if (proved() || other.proved()) {
                return other.proved() && (!proved() || other.millis < millis) ? other : this;
            }
            return new Result(
                    Math.max(atLeast, other.atLeast), Math.min(atMost, other.atMost), millis);
        }
    }

    /**
     * A rival.
     *
     * @param limit milliseconds for each of the four models; of both workers together halved when
     *     the clock is the processor's
     */
    Peer(Clock clock, double limit) {
        this.clock = clock;
        this.limit = limit;
    }

    /** A model slower than another that has proved it already is stopped. */
    Result best(Puzzle whole) {
        int greedy = new TurnsOnChains(whole).byGreed();
        Result best = new Result(new TurnsOnChains(whole).atLeast(), greedy, limit);
        if (best.proved()) {
            best = new Result(best.atLeast(), best.atMost() + 1, limit);
        }
        for (Puzzle puzzle : List.of(PlainFolding.of(whole), whole)) {
            best = best.and(averaged(best, most -> decided(puzzle, greedy, most)));
            best = best.and(averaged(best, most -> minimised(puzzle, greedy, most)));
        }
        return best;
    }

    /** Short proofs are repeated, since a processor's time is told in coarse steps. */
    private static Result averaged(Result best, DoubleFunction<Result> model) {
        Result result = model.apply(best.millis());
        double sum = result.millis();
        int times = 1;
        while (result.proved() && sum < ENOUGH_MILLIS && times < MOST_TIMES) {
            sum += model.apply(ENOUGH_MILLIS).millis();
            times++;
        }
        return new Result(result.atLeast(), result.atMost(), sum / times);
    }

    private Result minimised(Puzzle puzzle, int greedy, double most) {
        int bound = new TurnsOnChains(puzzle).atLeast();
        CpSolver solver = new CpSolver();
        double[] millis = {0};
        CpSolverStatus status =
                solve(solver, TurnsModel.fewest(puzzle, bound, greedy), most, millis);
        return switch (status) {
            case OPTIMAL -> {
                int least = (int) Math.round(solver.objectiveValue());
                yield new Result(least, least, millis[0]);
            }
            case FEASIBLE ->
                    new Result(
                            (int) Math.ceil(solver.bestObjectiveBound() - 0.001),
                            (int) Math.round(solver.objectiveValue()),
                            limit);
            case UNKNOWN -> new Result(bound, greedy, limit);
            case INFEASIBLE, MODEL_INVALID, UNRECOGNIZED ->
                    throw new IllegalStateException(status + ": the greedy order is one");
        };
    }

    private Result decided(Puzzle puzzle, int greedy, double most) {
        int turns = new TurnsOnChains(puzzle).atLeast();
        double[] millis = {0};
        while (millis[0] < most) {
            CpModel model = TurnsModel.possible(puzzle, turns);
            CpSolverStatus status = solve(new CpSolver(), model, most, millis);
            if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
                return new Result(turns, turns, millis[0]);
            }
            if (status != CpSolverStatus.INFEASIBLE) {
                break;
            }
            turns++;
            if (turns == greedy) {
                return new Result(turns, turns, millis[0]);
            }
        }
        return new Result(turns, Math.max(turns + 1, greedy), limit);
    }

    /** Solves until the time so far, of this and what went before, is more than allowed. */
    private CpSolverStatus solve(CpSolver solver, CpModel model, double most, double[] millis) {
        solver.getParameters().setNumWorkers(WORKERS);
        CountDownLatch ended = new CountDownLatch(1);
        long start = clock.nanos();
        double before = millis[0];
        Thread watch =
                new Thread(
                        () -> {
                            while (!isOver(ended)) {
                                if (before + since(start) > most) {
                                    solver.stopSearch();
                                }
                            }
                        },
                        "limit");
        watch.start();
        CpSolverStatus status = solver.solve(model);
        millis[0] += since(start);
        ended.countDown();
        return status;
    }

    private static boolean isOver(CountDownLatch ended) {
        try {
            return ended.await(20, TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    private double since(long start) {
        double millis = (clock.nanos() - start) / 1e6;
        return clock == Clock.PROCESSOR ? millis / WORKERS : millis;
    }
}
