package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * What is plain to see before any search, given to the solver so that it starts as well off: turns
 * that the chains of steps force, and an order found by greed. Steps have one tool each.
 */
final class TurnsOnChains {
    private static final int TRIES = 200;

    private final Puzzle puzzle;
    private final List<List<Integer>> previous = new ArrayList<>();
    private final List<List<Integer>> next = new ArrayList<>();
    private final int[] before;
    private final int[] after;

    TurnsOnChains(Puzzle puzzle) {
        this.puzzle = puzzle;
        for (int step = 0; step < puzzle.size(); step++) {
            previous.add(new ArrayList<>());
            next.add(new ArrayList<>());
        }
        for (int[] link : puzzle.links()) {
            previous.get(link[1]).add(link[0]);
            next.get(link[0]).add(link[1]);
        }
        before = new int[puzzle.size()];
        after = new int[puzzle.size()];
        for (int step = 0; step < puzzle.size(); step++) {
            for (int earlier : previous.get(step)) {
                before[step] = Math.max(before[step], before[earlier] + apart(earlier, step));
            }
        }
        for (int step = puzzle.size() - 1; step >= 0; step--) {
            for (int later : next.get(step)) {
                after[step] = Math.max(after[step], after[later] + apart(step, later));
            }
        }
    }

    private int apart(int one, int other) {
        return tool(one) == tool(other) ? 0 : 1;
    }

    private int tool(int step) {
        return puzzle.words().get(step)[0];
    }

    /** Turns that must be over before the one of this step. */
    int before(int step) {
        return before[step];
    }

    /** Turns that must follow the one of this step. */
    int after(int step) {
        return after[step];
    }

    /** No order has fewer turns: for each tool those that one chain forces, added up. */
    int atLeast() {
        int sum = 0;
        for (int tool = 0; tool < puzzle.tools(); tool++) {
            int[] forced = new int[puzzle.size()];
            int most = 0;
            for (int step = 0; step < puzzle.size(); step++) {
                forced[step] = tool(step) == tool ? 1 : 0;
                for (int earlier : previous.get(step)) {
                    boolean again = tool(step) == tool && tool(earlier) != tool;
                    forced[step] = Math.max(forced[step], forced[earlier] + (again ? 1 : 0));
                }
                most = Math.max(most, forced[step]);
            }
            sum += most;
        }
        return sum;
    }

    /** Turns of the best of many orders that take up the tool with most to do, or any other. */
    int byGreed() {
        Random random = new Random(1);
        int best = Integer.MAX_VALUE;
        for (int time = 0; time < TRIES; time++) {
            best = Math.min(best, turns(random, time == 0 ? 0 : 0.3));
        }
        return best;
    }

    private int turns(Random random, double any) {
        boolean[] done = new boolean[puzzle.size()];
        int left = puzzle.size();
        int turns = 0;
        while (left > 0) {
            List<List<Integer>> choices = new ArrayList<>();
            for (int tool = 0; tool < puzzle.tools(); tool++) {
                List<Integer> steps = now(done, tool);
                if (!steps.isEmpty()) {
                    choices.add(steps);
                }
            }
            Collections.shuffle(choices, random);
            List<Integer> chosen = choices.get(0);
            for (List<Integer> other : choices) {
                chosen =
                        random.nextDouble() >= any && other.size() > chosen.size() ? other : chosen;
            }
            chosen.forEach(step -> done[step] = true);
            left -= chosen.size();
            turns++;
        }
        return turns;
    }

    private List<Integer> now(boolean[] done, int tool) {
        List<Integer> steps = new ArrayList<>();
        boolean[] then = done.clone();
        for (int step = 0; step < puzzle.size(); step++) {
            if (!then[step]
                    && tool(step) == tool
                    && previous.get(step).stream().allMatch(one -> then[one])) {
                then[step] = true;
                steps.add(step);
            }
        }
        return steps;
    }
}
