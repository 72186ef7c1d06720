package counterstep.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The states that follow one: each activity that may start now is started as soon as it can. One is
 * left out if another could be over before it begins: then the other may as well be first.
 */
final class Expansion {
    private record Option(int activity, int start, List<Integer> chosen) {}

    private final Board board;
    private final int deadline;
    private final Layer layer;
    private int leastLeftOut = Integer.MAX_VALUE;

    /**
     * Expands states.
     *
     * @param deadline states that cannot end by then are left out
     * @param layer takes the others
     */
    Expansion(Board board, int deadline, Layer layer) {
        this.board = board;
        this.deadline = deadline;
        this.layer = layer;
    }

    /** The least bound of all that were left out: if nothing was found, nothing is shorter. */
    int leastLeftOut() {
        return leastLeftOut;
    }

    void expand(State state) {
        List<Option> options = options(board, state);
        Option soonest = options.get(0);
        for (Option option : options) {
            soonest = over(option) < over(soonest) ? option : soonest;
        }
        for (Option option : options) {
            if (option.equals(soonest) || option.start() < over(soonest)) {
                follow(state, option, options);
            }
        }
    }

    /** A state in which an activity has been started as soon as anybody can. */
    static State soonest(Board board, State state, int activity) {
        Option best =
                options(board, state, activity).stream()
                        .min(Comparator.comparingInt(Option::start))
                        .orElseThrow();
        return state.after(board, activity, best.start(), best.chosen());
    }

    private static List<Option> options(Board board, State state) {
        List<Option> options = new ArrayList<>();
        for (int activity = 0; activity < board.size; activity++) {
            if (state.ready(board, activity)) {
                options.addAll(options(board, state, activity));
            }
        }
        return options;
    }

    private static List<Option> options(Board board, State state, int activity) {
        int released = state.open().over(board, board.before[activity], state.last());
        List<Option> options = new ArrayList<>();
        for (List<Integer> chosen : state.people().choices(board, activity)) {
            int ready = Math.max(released, state.people().ready(board, activity, chosen));
            options.add(new Option(activity, state.open().fits(board, activity, ready), chosen));
        }
        return options;
    }

    /** When it has given back all it needs, and its worker can have any tool in hand again. */
    private int over(Option option) {
        return option.start()
                + Math.max(board.needed[option.activity()], board.handsFor[option.activity()])
                + (option.chosen().isEmpty() ? 0 : board.change);
    }

    private void follow(State state, Option option, List<Option> options) {
        int bound = chainBound(option, options);
        if (bound <= deadline) {
            State next = state.after(board, option.activity(), option.start(), option.chosen());
            if (layer.hasBetter(next)) {
                return;
            }
            bound = withLimits(next, bound);
            if (bound <= deadline) {
                layer.add(next.bounded(bound));
                return;
            }
        }
        leastLeftOut = Math.min(leastLeftOut, bound);
    }

    private int withLimits(State next, int chains) {
        int bound = chains;
        for (Limit limit : board.limits) {
            if (bound <= deadline) {
                bound = Math.max(bound, limit.bound(next, deadline));
            }
        }
        return bound;
    }

    /** All that is ready starts no sooner than this, each followed by its tail. */
    private int chainBound(Option chosen, List<Option> options) {
        int bound = end(chosen, chosen.start());
        int at = 0;
        while (at < options.size()) {
            int activity = options.get(at).activity();
            int soonest = Integer.MAX_VALUE;
            Option one = options.get(at);
            while (at < options.size() && options.get(at).activity() == activity) {
                soonest = Math.min(soonest, options.get(at).start());
                at++;
            }
            if (activity != chosen.activity()) {
                bound = Math.max(bound, end(one, Math.max(soonest, chosen.start())));
            }
        }
        return bound;
    }

    private int end(Option option, int start) {
        return start + board.duration[option.activity()] + board.tail[option.activity()];
    }
}
